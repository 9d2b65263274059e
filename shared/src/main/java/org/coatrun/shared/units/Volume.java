package org.coatrun.shared.units;

/**
 * A volume.
 *
 * @param cubicMetres the value in cubic metres; finite
 */
public record Volume(double cubicMetres) implements Comparable<Volume> {

  /** Nothing: zero cubic metres. */
  public static final Volume ZERO = new Volume(0);

  private static final double CUBIC_FEET = 0.3048 * 0.3048 * 0.3048;
  private static final double BOARD_FEET = 0.3048 * 0.3048 * 0.0254;
  private static final double US_GALLONS = 3.785411784e-3;
  private static final double LITRES = 0.001;

  public Volume {
    if (!Double.isFinite(cubicMetres)) {
      throw new IllegalArgumentException("not a finite volume: " + cubicMetres);
    }
  }

  /** The volume of {@code value} cubic metres. */
  public static Volume ofCubicMetres(double value) {
    return new Volume(value);
  }

  /** The volume of {@code value} cubic feet. */
  public static Volume ofCubicFeet(double value) {
    return new Volume(value * CUBIC_FEET);
  }

  /** The volume of {@code value} board feet (one square foot by one inch). */
  public static Volume ofBoardFeet(double value) {
    return new Volume(value * BOARD_FEET);
  }

  /** The volume of {@code value} US gallons. */
  public static Volume ofUsGallons(double value) {
    return new Volume(value * US_GALLONS);
  }

  /** The volume of {@code value} litres. */
  public static Volume ofLitres(double value) {
    return new Volume(value * LITRES);
  }

  /** This volume in cubic feet. */
  public double cubicFeet() {
    return cubicMetres / CUBIC_FEET;
  }

  /** This volume in board feet (one square foot by one inch). */
  public double boardFeet() {
    return cubicMetres / BOARD_FEET;
  }

  /** This volume in US gallons. */
  public double usGallons() {
    return cubicMetres / US_GALLONS;
  }

  /** This volume in litres. */
  public double litres() {
    return cubicMetres / LITRES;
  }

  /** The sum of both. */
  public Volume plus(Volume other) {
    return new Volume(cubicMetres + other.cubicMetres);
  }

  /** This less the other; may be negative. */
  public Volume minus(Volume other) {
    return new Volume(cubicMetres - other.cubicMetres);
  }

  /** This, {@code factor} times. */
  public Volume times(double factor) {
    return new Volume(cubicMetres * factor);
  }

  @Override
  public int compareTo(Volume other) {
    return Double.compare(cubicMetres, other.cubicMetres);
  }
}
