package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.coatrun.geometry.profile.SectionOutline;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/** Solids of profiles carried straight, unchanged or tapered. */
final class Extrusions {

  private Extrusions() {}

  static BuildResult.Built build(Shape.Extrusion s, Transform3 at) {
    return build(s.profile(), s.profile(), at.after(s.position()), s.direction(), s.depth());
  }

  static BuildResult.Built build(Shape.TaperedExtrusion s, Transform3 at) {
    return build(s.start(), s.end(), at.after(s.position()), s.direction(), s.depth());
  }

  private static BuildResult.Built build(
      Profile start, Profile end, Transform3 place, Vec3 direction, double depth) {
    Vec3 way = place.applyVector(direction.unit()).times(depth);
    Vec3 normal = place.x().cross(place.y());
    if (!(way.length() > 0)
        || Math.abs(normal.dot(way)) <= 1e-12 * normal.length() * way.length()) {
      throw NotBuildableException.empty("extrusion");
    }
    var end3 = place.about(place.origin().plus(way));
    var straight =
        new Sweeps.Way(
            List.of(place, end3), List.of(new RuledSheet(place, end3)), false, false, way.length());
    var notes = new ArrayList<BuildResult.Note>();
    SectionOutline a = Drawings.draw(start, notes);
    SectionOutline b = Objects.equals(start, end) ? a : Drawings.draw(end, notes);
    var built = Sweeps.build(start, a, b, straight, Double.NaN, notes);
    boolean even = Objects.equals(a, b);
    SectionOutline seen = Drawings.seenAlong(a, place, way);
    SectionOutline seenEnd = even ? seen : Drawings.seenAlong(b, place, way);
    Vec2 middle = Moments.centroid(a);
    Vec2 middleEnd = even ? middle : Moments.centroid(b);
    return Sweeps.withRun(
        built, seen, seenEnd, way.length(), on(place, middle), on(end3, middleEnd));
  }

  private static Vec3 on(Transform3 place, Vec2 point) {
    return place.apply(new Vec3(point.x(), point.y(), 0));
  }
}
