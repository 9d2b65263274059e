package org.coatrun.shared.units;

/**
 * A temperature.
 *
 * @param celsius the value in degrees Celsius; finite
 */
public record Temperature(double celsius) implements Comparable<Temperature> {

  private static final double FAHRENHEIT_ZERO = 32;
  private static final double FAHRENHEIT_PER_CELSIUS = 1.8;

  public Temperature {
    if (!Double.isFinite(celsius)) {
      throw new IllegalArgumentException("not a finite temperature: " + celsius);
    }
  }

  /** The temperature of {@code value} degrees Celsius. */
  public static Temperature ofCelsius(double value) {
    return new Temperature(value);
  }

  /** The temperature of {@code value} degrees Fahrenheit. */
  public static Temperature ofFahrenheit(double value) {
    return new Temperature((value - FAHRENHEIT_ZERO) / FAHRENHEIT_PER_CELSIUS);
  }

  /** This temperature in degrees Fahrenheit. */
  public double fahrenheit() {
    return celsius * FAHRENHEIT_PER_CELSIUS + FAHRENHEIT_ZERO;
  }

  @Override
  public int compareTo(Temperature other) {
    return Double.compare(celsius, other.celsius);
  }
}
