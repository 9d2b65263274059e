package org.coatrun.shared.units;

/**
 * A pressure.
 *
 * @param pascals the value in pascals; finite
 */
public record Pressure(double pascals) implements Comparable<Pressure> {

  /** Nothing: zero pascals. */
  public static final Pressure ZERO = new Pressure(0);

  private static final double KILOPASCALS = 1000;
  private static final double PSI = 6894.757293168;
  private static final double PSF = 47.88025898034;
  private static final double BAR = 1e5;

  public Pressure {
    if (!Double.isFinite(pascals)) {
      throw new IllegalArgumentException("not a finite pressure: " + pascals);
    }
  }

  /** The pressure of {@code value} pascals. */
  public static Pressure ofPascals(double value) {
    return new Pressure(value);
  }

  /** The pressure of {@code value} kilopascals. */
  public static Pressure ofKilopascals(double value) {
    return new Pressure(value * KILOPASCALS);
  }

  /** The pressure of {@code value} pounds per square inch. */
  public static Pressure ofPsi(double value) {
    return new Pressure(value * PSI);
  }

  /** The pressure of {@code value} pounds per square foot. */
  public static Pressure ofPsf(double value) {
    return new Pressure(value * PSF);
  }

  /** The pressure of {@code value} bar. */
  public static Pressure ofBar(double value) {
    return new Pressure(value * BAR);
  }

  /** This pressure in kilopascals. */
  public double kilopascals() {
    return pascals / KILOPASCALS;
  }

  /** This pressure in pounds per square inch. */
  public double psi() {
    return pascals / PSI;
  }

  /** This pressure in pounds per square foot. */
  public double psf() {
    return pascals / PSF;
  }

  /** This pressure in bar. */
  public double bar() {
    return pascals / BAR;
  }

  /** The sum of both. */
  public Pressure plus(Pressure other) {
    return new Pressure(pascals + other.pascals);
  }

  /** This less the other; may be negative. */
  public Pressure minus(Pressure other) {
    return new Pressure(pascals - other.pascals);
  }

  /** This, {@code factor} times. */
  public Pressure times(double factor) {
    return new Pressure(pascals * factor);
  }

  @Override
  public int compareTo(Pressure other) {
    return Double.compare(pascals, other.pascals);
  }
}
