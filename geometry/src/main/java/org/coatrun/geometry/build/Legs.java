package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.coatrun.shared.shape.Curve3;
import org.coatrun.shared.shape.Segment3;
import org.coatrun.shared.shape.Vec3;

/** A curve in space as straight legs and bends; other curves as short straight legs. */
final class Legs {

  private static final double SHORT = 1e-9;
  private static final double ROUND = 1e-9;
  private static final double SMOOTH = 1e-6;
  private static final int CHORDS_PER_POLE = 16;
  private static final int CHORDS_PER_TURN = 96;

  /**
   * One leg: a straight line, or a bend about {@code axis} through {@code centre} by {@code angle},
   * which is zero for a line.
   */
  record Leg(Vec3 from, Vec3 to, Vec3 centre, Vec3 axis, double angle) {

    static Leg line(Vec3 from, Vec3 to) {
      return new Leg(from, to, Vec3.ZERO, Vec3.Z, 0);
    }

    boolean straight() {
      return angle == 0;
    }

    double length() {
      return straight() ? from.distance(to) : from.distance(centre) * Math.abs(angle);
    }

    Vec3 directionAtStart() {
      return straight() ? to.minus(from).unit() : tangent(from);
    }

    Vec3 directionAtEnd() {
      return straight() ? to.minus(from).unit() : tangent(to);
    }

    private Vec3 tangent(Vec3 at) {
      return axis.cross(at.minus(centre)).times(Math.signum(angle)).unit();
    }
  }

  private Legs() {}

  static List<Leg> of(Curve3 curve, OptionalDouble fillet) {
    var legs = new ArrayList<Leg>();
    for (Segment3 s : curve.segments()) {
      if (s instanceof Segment3.Line l) {
        add(legs, Leg.line(l.from(), l.to()));
      } else if (s instanceof Segment3.Arc a) {
        arc(legs, a);
      } else {
        spline(legs, (Segment3.Spline) s);
      }
    }
    if (legs.isEmpty()) {
      throw NotBuildableException.empty("sweep along a curve");
    }
    return fillet.orElse(0) > 0 ? filleted(legs, fillet.getAsDouble()) : legs;
  }

  /** Whether one leg runs on into the next without a corner. */
  static boolean runsOn(Leg a, Leg b) {
    return a.directionAtEnd().distance(b.directionAtStart()) < SMOOTH;
  }

  private static void add(List<Leg> legs, Leg leg) {
    if (leg.length() > SHORT) {
      legs.add(leg);
    }
  }

  private static void arc(List<Leg> legs, Segment3.Arc a) {
    double r = a.u().length();
    boolean round =
        Math.abs(a.v().length() - r) < ROUND * r && Math.abs(a.u().dot(a.v())) < ROUND * r * r;
    if (round) {
      Vec3 from = a.at(a.start());
      Vec3 to = a.at(a.start() + a.sweep());
      add(legs, new Leg(from, to, a.centre(), a.u().cross(a.v()).unit(), a.sweep()));
      return;
    }
    int n = Math.max(4, (int) Math.ceil(CHORDS_PER_TURN * Math.abs(a.sweep()) / (2 * Math.PI)));
    for (int i = 0; i < n; i++) {
      Vec3 from = a.at(a.start() + a.sweep() * i / n);
      add(legs, Leg.line(from, a.at(a.start() + a.sweep() * (i + 1) / n)));
    }
  }

  private static void spline(List<Leg> legs, Segment3.Spline s) {
    List<Vec3> points = SplineCurve.points(s, CHORDS_PER_POLE * s.poles().size());
    for (int i = 1; i < points.size(); i++) {
      add(legs, Leg.line(points.get(i - 1), points.get(i)));
    }
  }

  /** Corners between straight legs rounded. */
  private static List<Leg> filleted(List<Leg> legs, double radius) {
    var out = new ArrayList<Leg>();
    Leg open = legs.get(0);
    for (int i = 1; i < legs.size(); i++) {
      Leg next = legs.get(i);
      Vec3 a = open.directionAtEnd();
      Vec3 b = next.directionAtStart();
      Vec3 axis = a.cross(b);
      double turn = Math.atan2(axis.length(), a.dot(b));
      double cut = radius * Math.tan(turn / 2);
      boolean room = cut < open.length() && cut < next.length();
      if (open.straight() && next.straight() && turn > SMOOTH && room) {
        Vec3 corner = next.from();
        Vec3 from = corner.minus(a.times(cut));
        Vec3 to = corner.plus(b.times(cut));
        Vec3 n = axis.unit();
        add(out, Leg.line(open.from(), from));
        add(out, new Leg(from, to, from.plus(n.cross(a).times(radius)), n, turn));
        open = Leg.line(to, next.to());
      } else {
        add(out, open);
        open = next;
      }
    }
    add(out, open);
    return out;
  }
}
