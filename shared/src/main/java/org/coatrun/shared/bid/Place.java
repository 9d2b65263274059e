package org.coatrun.shared.bid;

import java.util.Objects;
import java.util.Optional;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/**
 * Where an element is.
 *
 * @param storey name of the storey that the model puts it on, or empty
 * @param workingFloor name of the floor that it is sprayed from; the storey where nothing better is
 *     known
 * @param middle in plan, in the coordinates of the model
 * @param space name of the room that its middle lies in, or empty
 * @param top its highest point above the working floor
 * @param roof whether it is part of roof construction
 * @param supportsOnlyRoof whether it carries a roof and nothing else
 * @param underRoof the lowest part of the roof construction above the floor immediately below
 */
public record Place(
    String storey,
    String workingFloor,
    Optional<Vec2> middle,
    String space,
    Optional<Length> top,
    boolean roof,
    boolean supportsOnlyRoof,
    Optional<Length> underRoof) {

  public Place {
    Objects.requireNonNull(storey);
    Objects.requireNonNull(workingFloor);
    Objects.requireNonNull(space);
  }

  /** The same place, sprayed from another floor. */
  Place from(String floor) {
    return new Place(storey, floor, middle, space, top, roof, supportsOnlyRoof, underRoof);
  }

  /** The same place with another highest point above the floor. */
  Place upTo(Optional<Length> height) {
    return new Place(
        storey, workingFloor, middle, space, height, roof, supportsOnlyRoof, underRoof);
  }

  /** A place of which only the storey is known. */
  public static Place onStorey(String storey) {
    return new Place(
        storey, storey, Optional.empty(), "", Optional.empty(), false, false, Optional.empty());
  }
}
