package org.coatrun.testmodels.section;

/**
 * The cross-section of a member.
 *
 * <p>Areas and perimeters are exact: fillets count as quarter circles.
 */
public sealed interface Section
    permits IShape, RectangularHollow, RoundHollow, Angle, DoubleAngle, Rectangle, Round, Outline {

  /** Returns the designation, such as {@code W12X26}. */
  String name();

  /** Returns the area of steel in square metres. */
  double area();

  /** Returns the length of the outer outline in metres. */
  double perimeter();

  /** Returns the length of the inner outline in metres, zero where there is none. */
  double innerPerimeter();

  /** Returns the height along y in metres. */
  double depth();
}
