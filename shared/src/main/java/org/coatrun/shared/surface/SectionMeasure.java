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
 * @param cornerFactor k in the area of the coat across the member, heated · t + k t²: what a coat
 *     of thickness t, round at convex corners, has more than heated · t there and less at concave
 *     ones. Found at {@link #COAT_REFERENCE}; exact at other thicknesses while the coats of facing
 *     sides do not meet and fillets are not filled
 * @param varies whether the section changes along the member; then area and contour are those where
 *     contour over area is greatest: the least favourable
 */
public record SectionMeasure(
    Area steel,
    Length outline,
    Length heated,
    Length box,
    Length boxHeated,
    Basis basis,
    double cornerFactor,
    boolean varies) {

  /** The thickness that the coat's own volume is stated at: 1 in. */
  public static final Length COAT_REFERENCE = Length.ofInches(1);

  public SectionMeasure {
    if (!Double.isFinite(cornerFactor)) {
      throw new IllegalArgumentException("a corner factor that is not finite");
    }
  }

  /**
   * The contour by which a thickness is multiplied for the true volume of a coat per length: heated
   * + k t, its mean perimeter through the thickness. Never below zero.
   */
  public Length coatContour(Length thickness) {
    return Length.ofMetres(Math.max(0, heated.metres() + cornerFactor * thickness.metres()));
  }

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
