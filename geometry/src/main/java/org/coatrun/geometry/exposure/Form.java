package org.coatrun.geometry.exposure;

import java.util.Optional;
import org.coatrun.geometry.solid.Boundary;
import org.coatrun.geometry.solid.Box;
import org.coatrun.geometry.solid.Originals;

/**
 * What a body is, wherever it stands: its axes are the world's, its origin is a point of its own.
 * Bodies that are alike and turned alike share one; two that were made apart are never equal.
 */
public final class Form {

  private final Originals originals;
  private final Boundary boundary;
  private final double holes;
  private final Optional<Axis> axis;
  private final boolean soffitOnly;

  /**
   * @param originals what it is made of, holes under the threshold left out
   * @param boundary its surface
   * @param holes what the small holes left out add to the surface: their walls less their mouths,
   *     m²
   * @param axis where it is longer than wide
   * @param soffitOnly whether only what looks down is ever coated: deck
   */
  public Form(
      Originals originals,
      Boundary boundary,
      double holes,
      Optional<Axis> axis,
      boolean soffitOnly) {
    this.originals = originals;
    this.boundary = boundary;
    this.holes = holes;
    this.axis = axis;
    this.soffitOnly = soffitOnly;
  }

  public Originals originals() {
    return originals;
  }

  public Boundary boundary() {
    return boundary;
  }

  public double holes() {
    return holes;
  }

  public Optional<Axis> axis() {
    return axis;
  }

  public boolean soffitOnly() {
    return soffitOnly;
  }

  /** A box about it. */
  public Box bounds() {
    return originals.bounds();
  }
}
