package org.coatrun.shared.units;

/**
 * Mass per volume.
 *
 * @param kilogramsPerCubicMetre the value in kilograms per cubic metre; finite
 */
public record Density(double kilogramsPerCubicMetre) implements Comparable<Density> {

  /** Nothing: zero kilograms per cubic metre. */
  public static final Density ZERO = new Density(0);

  private static final double POUNDS_PER_CUBIC_FOOT = 0.45359237 / (0.3048 * 0.3048 * 0.3048);

  public Density {
    if (!Double.isFinite(kilogramsPerCubicMetre)) {
      throw new IllegalArgumentException("not a finite density: " + kilogramsPerCubicMetre);
    }
  }

  /** The density of {@code value} kilograms per cubic metre. */
  public static Density ofKilogramsPerCubicMetre(double value) {
    return new Density(value);
  }

  /** The density of {@code value} pounds per cubic foot (pcf). */
  public static Density ofPoundsPerCubicFoot(double value) {
    return new Density(value * POUNDS_PER_CUBIC_FOOT);
  }

  /** This density in pounds per cubic foot (pcf). */
  public double poundsPerCubicFoot() {
    return kilogramsPerCubicMetre / POUNDS_PER_CUBIC_FOOT;
  }

  /** The sum of both. */
  public Density plus(Density other) {
    return new Density(kilogramsPerCubicMetre + other.kilogramsPerCubicMetre);
  }

  /** This less the other; may be negative. */
  public Density minus(Density other) {
    return new Density(kilogramsPerCubicMetre - other.kilogramsPerCubicMetre);
  }

  /** This, {@code factor} times. */
  public Density times(double factor) {
    return new Density(kilogramsPerCubicMetre * factor);
  }

  @Override
  public int compareTo(Density other) {
    return Double.compare(kilogramsPerCubicMetre, other.kilogramsPerCubicMetre);
  }
}
