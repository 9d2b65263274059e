package org.coatrun.shared.units;

/**
 * A length.
 *
 * @param metres the value in metres; finite
 */
public record Length(double metres) implements Comparable<Length> {

  /** Nothing: zero metres. */
  public static final Length ZERO = new Length(0);

  private static final double MILLIMETRES = 0.001;
  private static final double FEET = 0.3048;
  private static final double INCHES = 0.0254;

  public Length {
    if (!Double.isFinite(metres)) {
      throw new IllegalArgumentException("not a finite length: " + metres);
    }
  }

  /** The length of {@code value} metres. */
  public static Length ofMetres(double value) {
    return new Length(value);
  }

  /** The length of {@code value} millimetres. */
  public static Length ofMillimetres(double value) {
    return new Length(value * MILLIMETRES);
  }

  /** The length of {@code value} feet. */
  public static Length ofFeet(double value) {
    return new Length(value * FEET);
  }

  /** The length of {@code value} inches. */
  public static Length ofInches(double value) {
    return new Length(value * INCHES);
  }

  /** This length in millimetres. */
  public double millimetres() {
    return metres / MILLIMETRES;
  }

  /** This length in feet. */
  public double feet() {
    return metres / FEET;
  }

  /** This length in inches. */
  public double inches() {
    return metres / INCHES;
  }

  /** The sum of both. */
  public Length plus(Length other) {
    return new Length(metres + other.metres);
  }

  /** This less the other; may be negative. */
  public Length minus(Length other) {
    return new Length(metres - other.metres);
  }

  /** This, {@code factor} times. */
  public Length times(double factor) {
    return new Length(metres * factor);
  }

  /** The rectangle of this by the other. */
  public Area times(Length other) {
    return new Area(metres * other.metres);
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(metres, other.metres);
  }
}
