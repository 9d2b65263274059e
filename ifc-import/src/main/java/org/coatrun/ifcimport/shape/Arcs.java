package org.coatrun.ifcimport.shape;

import org.coatrun.shared.shape.Segment3;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** Pieces of circles and ellipses. */
final class Arcs {

  private static final double TURN = 2 * Math.PI;
  private static final double STRAIGHT = 1e-12;

  private Arcs() {}

  /** A full turn of an ellipse in the xy plane of a frame. */
  static Segment3.Arc whole(Transform3 frame, double semi1, double semi2) {
    return new Segment3.Arc(
        frame.origin(), frame.x().times(semi1), frame.y().times(semi2), 0, TURN);
  }

  /**
   * The part of an ellipse between two parameters, forwards or backwards; a full turn where they
   * are the same.
   */
  static Segment3.Arc part(Segment3.Arc whole, double from, double to, boolean forwards) {
    double span = forwards ? to - from : from - to;
    span = span - TURN * Math.floor(span / TURN);
    if (span < 1e-9 || span > TURN - 1e-9) {
      span = TURN;
    }
    return new Segment3.Arc(whole.centre(), whole.u(), whole.v(), from, forwards ? span : -span);
  }

  /** The parameter of the point of the ellipse that is nearest in direction, in (−π, π]. */
  static double parameter(Segment3.Arc ellipse, Vec3 point) {
    Vec3 r = point.minus(ellipse.centre());
    double x = r.dot(ellipse.u()) / ellipse.u().dot(ellipse.u());
    double y = r.dot(ellipse.v()) / ellipse.v().dot(ellipse.v());
    return Math.atan2(y, x);
  }

  /** The circular arc through three points; a straight piece where they lie in line. */
  static Segment3 through(Vec3 a, Vec3 b, Vec3 c) {
    Vec3 ab = b.minus(a);
    Vec3 ac = c.minus(a);
    Vec3 normal = ab.cross(ac);
    double n2 = normal.dot(normal);
    if (n2 < STRAIGHT * ab.dot(ab) * ac.dot(ac) || n2 == 0) {
      return new Segment3.Line(a, c);
    }
    Vec3 toCentre =
        normal
            .cross(ab)
            .times(ac.dot(ac))
            .plus(ac.cross(normal).times(ab.dot(ab)))
            .times(1 / (2 * n2));
    Vec3 u = toCentre.times(-1);
    Vec3 v = normal.times(1 / Math.sqrt(n2)).cross(u);
    var circle = new Segment3.Arc(a.plus(toCentre), u, v, 0, TURN);
    double sweep = parameter(circle, c);
    return new Segment3.Arc(circle.centre(), u, v, 0, sweep > 0 ? sweep : sweep + TURN);
  }
}
