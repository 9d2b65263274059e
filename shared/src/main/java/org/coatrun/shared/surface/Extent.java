package org.coatrun.shared.surface;

import java.util.Objects;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.shape.Vec3;

/**
 * Where a measured element is: its middle line and the box about it, in metres, world axes about
 * the building's origin.
 *
 * @param from one end of the middle line of its smallest box
 * @param to the other end
 * @param depth vertical extent of what lies across the middle line, not negative
 * @param low least coordinates of its body
 * @param high greatest coordinates of its body
 */
public record Extent(ElementId id, Vec3 from, Vec3 to, double depth, Vec3 low, Vec3 high) {

  public Extent {
    Objects.requireNonNull(id);
    Objects.requireNonNull(from);
    Objects.requireNonNull(to);
    if (!(depth >= 0) || !(low.z() <= high.z())) {
      throw new IllegalArgumentException("an extent below nothing: " + id);
    }
  }

  /** Whether the middle line stands rather than lies: more than 60 degrees from the level. */
  public boolean upright() {
    Vec3 along = to.minus(from);
    return Math.abs(along.z()) > 0.866 * along.length();
  }

  /** Whether the middle line lies: less than 15 degrees from the level. */
  public boolean lies() {
    Vec3 along = to.minus(from);
    return Math.abs(along.z()) < 0.259 * along.length();
  }
}
