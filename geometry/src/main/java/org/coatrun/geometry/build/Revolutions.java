package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.coatrun.geometry.profile.ArcCorners;
import org.coatrun.geometry.profile.SectionOutline;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/**
 * Solids of profiles carried round an axis in their plane. Side areas follow from the turned curve
 * itself; the volume of an unchanging profile is angle times first moment (Pappus).
 */
final class Revolutions {

  private static final double IN_PLANE = 1e-6;
  private static final double WHOLE_TURN = 2 * Math.PI - 1e-9;

  private Revolutions() {}

  static BuildResult.Built build(Shape.Revolution s, Transform3 at) {
    return build(
        s.profile(),
        s.profile(),
        at.after(s.position()),
        s.axisPoint(),
        s.axisDirection(),
        s.angle());
  }

  static BuildResult.Built build(Shape.TaperedRevolution s, Transform3 at) {
    return build(
        s.start(), s.end(), at.after(s.position()), s.axisPoint(), s.axisDirection(), s.angle());
  }

  private static BuildResult.Built build(
      Profile start, Profile end, Transform3 place, Vec3 point, Vec3 direction, double angle) {
    Vec3 axis = direction.unit();
    if (!(Math.abs(angle) > 0) || axis.length() == 0) {
      throw NotBuildableException.empty("revolution");
    }
    if (Math.abs(axis.z()) > IN_PLANE || Math.abs(point.z()) > IN_PLANE) {
      throw impossible("The axis of a revolution does not lie in the plane of its profile.");
    }
    var notes = new ArrayList<BuildResult.Note>();
    SectionOutline a = Drawings.draw(start, notes);
    boolean plain = Objects.equals(start, end);
    SectionOutline b = plain ? a : Drawings.draw(end, notes);
    double moment = moment(a, point, axis);
    boolean touches = reach(a, point, axis);
    var turn = new Turn(place, Transform3.IDENTITY, point, axis);
    double turned = Math.min(Math.abs(angle), 2 * Math.PI) * Math.signum(angle);
    Sweeps.Way way = way(turn, turned, plain, touches);
    double volume = plain ? Math.abs(turned * moment * place.determinant()) : Double.NaN;
    var built = Sweeps.build(start, a, b, way, volume, notes);
    return withRun(built, turn, turned, a, b);
  }

  private static Sweeps.Way way(Turn turn, double angle, boolean plain, boolean touches) {
    boolean looped = Math.abs(angle) >= WHOLE_TURN && plain;
    int n = steps(angle);
    double share = ArcCorners.share(angle, n, !looped);
    var stations = new ArrayList<Transform3>();
    for (int k = 0; k < (looped ? n : n + 1); k++) {
      boolean end = !looped && (k == 0 || k == n);
      stations.add(turn.at(angle * k / n, end ? 1 : share));
    }
    var sheets = new ArrayList<Sheet>();
    for (int k = 0; k < n; k++) {
      sheets.add(new TurnedSheet(turn, angle * k / n, angle / n));
    }
    boolean even = plain && isRigid(turn.frame());
    List<Sheet> used = even ? sheets.subList(0, 1) : sheets;
    return new Sweeps.Way(stations, used, looped, touches, Double.POSITIVE_INFINITY);
  }

  /** Steps of a turn: 24 for each quarter, two at least. */
  static int steps(double angle) {
    return Math.max(3, (int) Math.ceil(Math.abs(angle) / (Math.PI / 2) * 12 - 1e-9));
  }

  private static boolean isRigid(Transform3 t) {
    double x = t.x().length();
    var unit =
        new Transform3(t.x().times(1 / x), t.y().times(1 / x), t.z().times(1 / x), Vec3.ZERO);
    return unit.isRigid();
  }

  private static BuildResult.Built withRun(
      BuildResult.Built built, Turn turn, double angle, SectionOutline a, SectionOutline b) {
    Transform3 first = turn.at(0, 1);
    Transform3 last = turn.at(angle, 1);
    SectionOutline start = Drawings.seenAlong(a, first, first.x().cross(first.y()));
    SectionOutline end =
        Objects.equals(a, b) ? start : Drawings.seenAlong(b, last, last.x().cross(last.y()));
    Vec2 ca = Moments.centroid(a);
    Vec3 from = first.apply(new Vec3(ca.x(), ca.y(), 0));
    Vec2 cb = Moments.centroid(b);
    Vec3 to = last.apply(new Vec3(cb.x(), cb.y(), 0));
    double radius = new Vec3(ca.x(), ca.y(), 0).minus(turn.point()).cross(turn.axis()).length();
    double other = new Vec3(cb.x(), cb.y(), 0).minus(turn.point()).cross(turn.axis()).length();
    double scale = Math.cbrt(Math.abs(turn.frame().determinant()));
    double length = Math.abs(angle) * 0.5 * (radius + other) * scale;
    return Sweeps.withRun(built, start, end, length, from, to);
  }

  /** Moment of the outline's area about the axis, in m³. */
  private static double moment(SectionOutline outline, Vec3 point, Vec3 axis) {
    Vec2 m = Moments.about(outline, new Vec2(point.x(), point.y()));
    return axis.x() * m.y() - axis.y() * m.x();
  }

  /** Whether the outline touches the axis; one that crosses it is refused. */
  private static boolean reach(SectionOutline outline, Vec3 point, Vec3 axis) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (var region : outline.regions()) {
      for (Vec2 p : Loft.of(region.outer(), Sweeps.PER_QUARTER).flatStart().points()) {
        double side = axis.x() * (p.y() - point.y()) - axis.y() * (p.x() - point.x());
        low = Math.min(low, side);
        high = Math.max(high, side);
      }
    }
    double size = high - low;
    if (low < -1e-6 * size && high > 1e-6 * size) {
      throw impossible("The axis of a revolution runs through its profile.");
    }
    return Math.min(Math.abs(low), Math.abs(high)) <= 1e-6 * size;
  }

  private static NotBuildableException impossible(String sentence) {
    return new NotBuildableException(SurfaceFinding.IMPOSSIBLE_SECTION, "revolution", sentence);
  }
}
