package org.coatrun.geometry.exposure;

import java.util.Optional;
import org.coatrun.geometry.solid.Boundary;
import org.coatrun.geometry.solid.Box;
import org.coatrun.geometry.solid.Originals;
import org.coatrun.shared.model.ElementId;

/**
 * A body that stands in the building: measured itself, or only covering others.
 *
 * @param originals what it is made of, holes under the threshold left out
 * @param boundary its surface
 * @param holes what the small holes left out add to the surface: their walls less their mouths, m²
 * @param axis where it is longer than wide
 * @param soffitOnly whether only what looks down is ever coated: deck
 */
public record Thing(
    ElementId id,
    Originals originals,
    Boundary boundary,
    double holes,
    Optional<Axis> axis,
    boolean soffitOnly) {

  /** A body that is coated all round. */
  public Thing(
      ElementId id, Originals originals, Boundary boundary, double holes, Optional<Axis> axis) {
    this(id, originals, boundary, holes, axis, false);
  }

  /** A box about it. */
  public Box bounds() {
    return originals.bounds();
  }
}
