package org.coatrun.shared.units;

/**
 * A mass; the trade says weight.
 *
 * @param kilograms the value in kilograms; finite
 */
public record Mass(double kilograms) implements Comparable<Mass> {

  /** Nothing: zero kilograms. */
  public static final Mass ZERO = new Mass(0);

  private static final double POUNDS = 0.45359237;
  private static final double TONNES = 1000;
  private static final double SHORT_TONS = 907.18474;

  public Mass {
    if (!Double.isFinite(kilograms)) {
      throw new IllegalArgumentException("not a finite mass: " + kilograms);
    }
  }

  /** The mass of {@code value} kilograms. */
  public static Mass ofKilograms(double value) {
    return new Mass(value);
  }

  /** The mass of {@code value} pounds. */
  public static Mass ofPounds(double value) {
    return new Mass(value * POUNDS);
  }

  /** The mass of {@code value} tonnes. */
  public static Mass ofTonnes(double value) {
    return new Mass(value * TONNES);
  }

  /** The mass of {@code value} short tons (2,000 lb). */
  public static Mass ofShortTons(double value) {
    return new Mass(value * SHORT_TONS);
  }

  /** This mass in pounds. */
  public double pounds() {
    return kilograms / POUNDS;
  }

  /** This mass in tonnes. */
  public double tonnes() {
    return kilograms / TONNES;
  }

  /** This mass in short tons (2,000 lb). */
  public double shortTons() {
    return kilograms / SHORT_TONS;
  }

  /** The sum of both. */
  public Mass plus(Mass other) {
    return new Mass(kilograms + other.kilograms);
  }

  /** This less the other; may be negative. */
  public Mass minus(Mass other) {
    return new Mass(kilograms - other.kilograms);
  }

  /** This, {@code factor} times. */
  public Mass times(double factor) {
    return new Mass(kilograms * factor);
  }

  @Override
  public int compareTo(Mass other) {
    return Double.compare(kilograms, other.kilograms);
  }
}
