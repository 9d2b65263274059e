package org.coatrun.shared.units;

/**
 * How fast steel warms: heated perimeter over area (Hp/A, also written Am/V) of a section.
 *
 * <p>The same fact has two more forms in the trade: W/D, weight per foot over heated perimeter in
 * lb/ft/in, and A/P, area over heated perimeter in inches, which falls as Hp/A grows. Both are made
 * and read here; W/D by the weight itself where a designation states a nominal one.
 *
 * @param perMetre heated perimeter over area in 1/m; finite, positive
 */
public record SectionFactor(double perMetre) implements Comparable<SectionFactor> {

  /** Density of steel by which area becomes weight: 490 lb/ft3. */
  private static final double STEEL_POUNDS_PER_CUBIC_INCH = 490.0 / 1728.0;

  public SectionFactor {
    if (!(perMetre > 0) || Double.isInfinite(perMetre)) {
      throw new IllegalArgumentException("not a positive section factor: " + perMetre);
    }
  }

  /** The factor of a section from its heated perimeter and steel area. */
  public static SectionFactor of(Length heatedPerimeter, Area area) {
    return new SectionFactor(heatedPerimeter.metres() / area.squareMetres());
  }

  /** The factor whose A/P is {@code inches}. */
  public static SectionFactor ofAreaOverPerimeterInches(double inches) {
    return new SectionFactor(1 / (inches * 0.0254));
  }

  /** The factor whose W/D at 490 lb/ft3 is {@code poundsPerFootPerInch}. */
  public static SectionFactor ofWeightOverPerimeter(double poundsPerFootPerInch) {
    return ofAreaOverPerimeterInches(poundsPerFootPerInch / (12 * STEEL_POUNDS_PER_CUBIC_INCH));
  }

  /** A/P in inches. */
  public double areaOverPerimeterInches() {
    return 1 / (perMetre * 0.0254);
  }

  /** W/D in lb/ft/in with the weight that 490 lb/ft3 gives: 133.97 over Hp/A. */
  public double weightOverPerimeter() {
    return areaOverPerimeterInches() * 12 * STEEL_POUNDS_PER_CUBIC_INCH;
  }

  @Override
  public int compareTo(SectionFactor other) {
    return Double.compare(perMetre, other.perMetre);
  }
}
