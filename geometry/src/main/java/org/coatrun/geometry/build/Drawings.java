package org.coatrun.geometry.build;

import java.util.List;
import org.coatrun.geometry.profile.OutlineResult;
import org.coatrun.geometry.profile.Outlines;
import org.coatrun.geometry.profile.Rectangle2;
import org.coatrun.geometry.profile.Region;
import org.coatrun.geometry.profile.Ring;
import org.coatrun.geometry.profile.SectionOutline;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Transform2;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/** Outlines for sweeps: drawn with their notes, and as they stand square to the way. */
final class Drawings {

  /** A hole this share of the outer area makes a hollow section, a smaller one is a hole. */
  private static final double HOLLOW_SHARE = 0.2;

  private Drawings() {}

  /** Draws a profile, adding to the notes; throws where it cannot be. */
  static SectionOutline draw(Profile profile, List<BuildResult.Note> notes) {
    OutlineResult result = Outlines.of(profile);
    if (result instanceof OutlineResult.Drawn d) {
      d.notes()
          .forEach(
              n ->
                  notes.add(
                      new BuildResult.Note(n.code(), named(profile) + ": " + n.words() + ".")));
      return d.outline();
    }
    if (result instanceof OutlineResult.NotHandled n) {
      throw NotBuildableException.notHandled(n.kind());
    }
    throw new NotBuildableException(
        SurfaceFinding.IMPOSSIBLE_SECTION,
        "profile",
        named(profile) + ": " + ((OutlineResult.Impossible) result).sentence() + ".");
  }

  /**
   * The outline seen along a direction: its projection onto the plane square to it, the drawing's x
   * axis kept as x.
   */
  static SectionOutline seenAlong(SectionOutline outline, Transform3 place, Vec3 way) {
    Vec3 w = way.unit();
    Vec3 x = place.x().minus(w.times(place.x().dot(w)));
    Vec3 y = place.y().minus(w.times(place.y().dot(w)));
    Vec3 e1 = x.length() > 0 ? x.unit() : w.anyPerpendicular();
    Vec3 e2 = w.cross(e1);
    Vec2 image = new Vec2(y.dot(e1), y.dot(e2));
    if (image.y() < 0) {
      image = new Vec2(image.x(), -image.y());
    }
    Vec2 xImage = new Vec2(x.length(), 0);
    boolean plain = near(xImage, new Vec2(1, 0)) && near(image, new Vec2(0, 1));
    return plain ? outline : outline.map(new Transform2(xImage, image, Vec2.ZERO));
  }

  /** Whether a region with holes is a hollow section rather than a plate with holes in it. */
  static boolean hollow(Profile profile, Region region, double length) {
    if (profile instanceof Profile.Placed p) {
      return hollow(p.of(), region, length);
    }
    if (profile instanceof Profile.CircleHollow || profile instanceof Profile.RectangleHollow) {
      return true;
    }
    if (region.holes().size() != 1) {
      return false;
    }
    Ring hole = region.holes().get(0);
    Rectangle2 box = hole.bounds();
    return -hole.area() >= HOLLOW_SHARE * region.outer().area()
        && length >= 0.5 * Math.max(box.width(), box.height());
  }

  private static boolean near(Vec2 a, Vec2 b) {
    return a.distance(b) < 1e-12;
  }

  private static String named(Profile profile) {
    return profile.name().isEmpty() ? "Profile without a name" : "Profile " + profile.name();
  }
}
