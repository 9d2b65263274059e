package org.coatrun.geometry.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Vec2;

/**
 * A polygon whose corners may be rounded: each corner is replaced by the arc of its radius that
 * touches both sides, whatever the angle between them.
 */
final class Corners {

  private static final double SLACK = 1e-6;

  private final List<Vec2> points = new ArrayList<>();
  private final List<Double> radii = new ArrayList<>();

  Corners at(double x, double y) {
    return at(x, y, 0);
  }

  Corners at(double x, double y, OptionalDouble radius) {
    return at(x, y, radius.orElse(0));
  }

  Corners at(double x, double y, double radius) {
    points.add(new Vec2(x, y));
    radii.add(radius);
    return this;
  }

  /** The ring; corners in the order they were given. */
  Ring ring() {
    int n = points.size();
    var cut = new double[n];
    for (int i = 0; i < n; i++) {
      cut[i] = tangentLength(i);
    }
    var pieces = new ArrayList<Segment2>();
    for (int i = 0; i < n; i++) {
      addArc(pieces, i, cut[i]);
      addLine(pieces, i, cut[i], cut[(i + 1) % n]);
    }
    return new Ring(pieces);
  }

  private double tangentLength(int i) {
    double r = radii.get(i);
    return r <= 0 ? 0 : r * Math.tan(0.5 * Math.abs(turn(i)));
  }

  private void addArc(List<Segment2> pieces, int i, double cut) {
    if (cut > 0) {
      Vec2 along = before(i);
      double turn = turn(i);
      Vec2 from = points.get(i).minus(along.times(cut));
      Vec2 u = along.left().times(-Math.signum(turn) * radii.get(i));
      pieces.add(new Segment2.Arc(from.minus(u), u, u.left(), 0, turn));
    }
  }

  private void addLine(List<Segment2> pieces, int i, double cutHere, double cutNext) {
    Vec2 a = points.get(i);
    Vec2 b = points.get((i + 1) % points.size());
    double length = a.distance(b);
    double left = length - cutHere - cutNext;
    if (left < -SLACK * length) {
      throw ImpossibleSectionException.radius(
          Math.max(radii.get(i), radii.get((i + 1) % points.size())));
    }
    if (left > SLACK * length) {
      Vec2 d = b.minus(a).unit();
      pieces.add(new Segment2.Line(a.plus(d.times(cutHere)), b.minus(d.times(cutNext))));
    }
  }

  private Vec2 before(int i) {
    int n = points.size();
    return points.get(i).minus(points.get((i + n - 1) % n)).unit();
  }

  private double turn(int i) {
    Vec2 a = before(i);
    Vec2 b = before((i + 1) % points.size());
    return Math.atan2(a.cross(b), a.dot(b));
  }
}
