package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.geometry.profile.ArcCorners;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/**
 * The way of a plane along legs: square to each leg, mitred where two meet in a corner, turned
 * about the axis of a bend.
 */
final class PathWay {

  private static final double CLOSED = 1e-7;

  private final Transform3 outer;
  private final List<Legs.Leg> legs;
  private final boolean looped;
  private final List<Transform3> stations = new ArrayList<>();
  private final List<Sheet> sheets = new ArrayList<>();

  private PathWay(Transform3 outer, List<Legs.Leg> legs) {
    this.outer = outer;
    this.legs = legs;
    this.looped = legs.get(0).from().distance(legs.get(legs.size() - 1).to()) < CLOSED;
  }

  /**
   * Carries a plane along.
   *
   * @param first the plane's place at the start of the first leg, z along it
   * @param outer from the legs' axes to those asked for
   */
  static Sweeps.Way of(List<Legs.Leg> legs, Transform3 first, Transform3 outer) {
    var walk = new PathWay(outer, legs);
    walk.go(first);
    double length = legs.stream().mapToDouble(Legs.Leg::length).sum();
    return new Sweeps.Way(walk.stations, walk.sheets, walk.looped, false, length);
  }

  private void go(Transform3 first) {
    Transform3 frame = first;
    int n = legs.size();
    Legs.Leg last = legs.get(n - 1);
    Transform3 here = looped ? mitred(first, last, legs.get(0)) : first;
    for (int i = 0; i < n; i++) {
      Legs.Leg leg = legs.get(i);
      Transform3 end = carried(frame, leg);
      boolean final_ = i == n - 1;
      Legs.Leg next = legs.get((i + 1) % n);
      Transform3 there = final_ && !looped ? end : mitredEnd(end, leg, next);
      stations.add(outer.after(here));
      if (leg.straight()) {
        sheets.add(new RuledSheet(outer.after(here), outer.after(there)));
      } else {
        bend(frame, leg);
      }
      if (final_ && !looped) {
        stations.add(outer.after(there));
      }
      here = there;
      frame = Legs.runsOn(leg, next) ? end : swung(end, leg, next);
    }
  }

  private void bend(Transform3 frame, Legs.Leg leg) {
    int n = Revolutions.steps(leg.angle());
    double share = ArcCorners.share(leg.angle(), n, true);
    var turn = new Turn(outer, frame, leg.centre(), leg.axis());
    for (int k = 0; k < n; k++) {
      if (k > 0) {
        stations.add(turn.at(leg.angle() * k / n, share));
      }
      sheets.add(new TurnedSheet(turn, leg.angle() * k / n, leg.angle() / n));
    }
  }

  /** The frame at the end of a leg that it enters square. */
  private static Transform3 carried(Transform3 frame, Legs.Leg leg) {
    if (leg.straight()) {
      return frame.about(leg.to());
    }
    return rotated(frame, leg.axis(), leg.angle(), leg.to());
  }

  /** The frame for the next leg: turned about the corner by the least angle. */
  private static Transform3 swung(Transform3 end, Legs.Leg leg, Legs.Leg next) {
    Vec3 a = leg.directionAtEnd();
    Vec3 b = next.directionAtStart();
    Vec3 axis = a.cross(b);
    return rotated(end, axis.unit(), Math.atan2(axis.length(), a.dot(b)), next.from());
  }

  private static Transform3 mitredEnd(Transform3 end, Legs.Leg leg, Legs.Leg next) {
    return onto(end, leg.directionAtEnd(), next.directionAtStart());
  }

  private static Transform3 mitred(Transform3 start, Legs.Leg before, Legs.Leg leg) {
    Vec3 a = before.directionAtEnd();
    Vec3 b = leg.directionAtStart();
    return onto(start, b, a);
  }

  /** The plane pushed along {@code way} onto the plane half-way between both directions. */
  private static Transform3 onto(Transform3 frame, Vec3 way, Vec3 other) {
    Vec3 m = way.plus(other);
    double k = way.dot(m);
    if (k < 1e-3) {
      throw new NotBuildableException(
          SurfaceFinding.IMPOSSIBLE_SECTION, "sweep", "A sweep turns back on itself.");
    }
    return new Transform3(
        frame.x().minus(way.times(frame.x().dot(m) / k)),
        frame.y().minus(way.times(frame.y().dot(m) / k)),
        frame.z(),
        frame.origin());
  }

  private static Transform3 rotated(Transform3 f, Vec3 axis, double angle, Vec3 origin) {
    var turn = new Turn(Transform3.IDENTITY, Transform3.IDENTITY, Vec3.ZERO, axis);
    Transform3 r = turn.at(angle, 1);
    Vec3 z = r.x().cross(r.y());
    var rotation = new Transform3(r.x(), r.y(), z, Vec3.ZERO);
    return new Transform3(
        rotation.applyVector(f.x()),
        rotation.applyVector(f.y()),
        rotation.applyVector(f.z()),
        origin);
  }
}
