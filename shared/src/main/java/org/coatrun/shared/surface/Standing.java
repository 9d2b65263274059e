package org.coatrun.shared.surface;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/**
 * Where an element stands among the floors and rooms of its building.
 *
 * @param middle of the box about it, in plan about {@link
 *     org.coatrun.shared.model.Building#origin()}
 * @param low its lowest point in world axes
 * @param high its highest point in world axes
 * @param floor the floor under it: the plate and the height of its top there
 * @param over the nearest plate above its middle and the height of that plate's underside there
 * @param room the room that its middle lies in, or over, where the room's ceiling is lower
 * @param passed the floors that what stands upright goes through above that one, from the lowest up
 */
public record Standing(
    ElementId id,
    Vec2 middle,
    Length low,
    Length high,
    Optional<Level> floor,
    Optional<Level> over,
    Optional<ElementId> room,
    List<Level> passed) {

  /** A slab or deck and a height in world axes. */
  public record Level(ElementId plate, Length height) {}

  public Standing {
    Objects.requireNonNull(id);
    Objects.requireNonNull(middle);
    passed = List.copyOf(passed);
    if (low.compareTo(high) > 0) {
      throw new IllegalArgumentException("an element whose lowest point lies above its highest");
    }
  }
}
