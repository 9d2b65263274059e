package org.coatrun.shared.surface;

import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;

/**
 * What a cut across a member measures.
 *
 * @param steel area of the steel
 * @param outline whole outer contour, as drawn: with fillets where the model gives them
 * @param heated the part of the contour that is exposed: three or four sides come out by themselves
 * @param box perimeter of the enclosing rectangle
 * @param boxHeated the exposed part of that rectangle
 * @param basis how the contour treats fillets
 */
public record SectionMeasure(
    Area steel, Length outline, Length heated, Length box, Length boxHeated, Basis basis) {

  /** Three perimeters of a rolled section are in print and differ by 1 to 3 %. */
  public enum Basis {
    /** Root fillets as the model gives them. */
    FILLETED,
    /** Sharp inner corners: the model gives no fillet; the conservative reading. */
    SHARP,
    /** As the body is drawn: no parametric profile to tell. */
    AS_DRAWN
  }
}
