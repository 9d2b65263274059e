package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.coatrun.geometry.profile.SelfCrossing;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/** Finds faces whose outline crosses itself. */
final class CrossedFaces {

  private CrossedFaces() {}

  /**
   * A note where there are any.
   *
   * @param faces their rings, by numbers of places
   */
  static List<BuildResult.Note> notes(List<int[][]> faces, List<Vec3> place) {
    boolean any = faces.stream().flatMap(Stream::of).anyMatch(ring -> crosses(ring, place));
    return any
        ? List.of(
            new BuildResult.Note(
                SurfaceFinding.CROSSED_OUTLINE, "A face of the body crosses itself."))
        : List.of();
  }

  private static boolean crosses(int[] ring, List<Vec3> place) {
    if (ring.length < 4) {
      return false;
    }
    Vec3 widest = Vec3.ZERO;
    for (int i = 0; i < ring.length; i++) {
      Vec3 at = place.get(ring[i]);
      Vec3 next = place.get(ring[(i + 1) % ring.length]);
      Vec3 last = place.get(ring[(i + 2) % ring.length]);
      Vec3 corner = next.minus(at).cross(last.minus(at));
      widest = corner.length() > widest.length() ? corner : widest;
    }
    return widest.length() > 0 && SelfCrossing.of(seenAlong(widest.unit(), ring, place));
  }

  private static List<Vec2> seenAlong(Vec3 way, int[] ring, List<Vec3> place) {
    Vec3 u = way.anyPerpendicular();
    Vec3 v = way.cross(u);
    var corners = new ArrayList<Vec2>();
    for (int i : ring) {
      corners.add(new Vec2(place.get(i).dot(u), place.get(i).dot(v)));
    }
    return corners;
  }
}
