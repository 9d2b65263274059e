package org.coatrun.shared.units;

/**
 * Mass per length of a section.
 *
 * @param kilogramsPerMetre the value in kilograms per metre; finite
 */
public record LinearDensity(double kilogramsPerMetre) implements Comparable<LinearDensity> {

  /** Nothing: zero kilograms per metre. */
  public static final LinearDensity ZERO = new LinearDensity(0);

  private static final double POUNDS_PER_FOOT = 0.45359237 / 0.3048;

  public LinearDensity {
    if (!Double.isFinite(kilogramsPerMetre)) {
      throw new IllegalArgumentException("not a finite lineardensity: " + kilogramsPerMetre);
    }
  }

  /** The linear density of {@code value} kilograms per metre. */
  public static LinearDensity ofKilogramsPerMetre(double value) {
    return new LinearDensity(value);
  }

  /** The linear density of {@code value} pounds per foot. */
  public static LinearDensity ofPoundsPerFoot(double value) {
    return new LinearDensity(value * POUNDS_PER_FOOT);
  }

  /** This linear density in pounds per foot. */
  public double poundsPerFoot() {
    return kilogramsPerMetre / POUNDS_PER_FOOT;
  }

  /** The sum of both. */
  public LinearDensity plus(LinearDensity other) {
    return new LinearDensity(kilogramsPerMetre + other.kilogramsPerMetre);
  }

  /** This less the other; may be negative. */
  public LinearDensity minus(LinearDensity other) {
    return new LinearDensity(kilogramsPerMetre - other.kilogramsPerMetre);
  }

  /** This, {@code factor} times. */
  public LinearDensity times(double factor) {
    return new LinearDensity(kilogramsPerMetre * factor);
  }

  @Override
  public int compareTo(LinearDensity other) {
    return Double.compare(kilogramsPerMetre, other.kilogramsPerMetre);
  }
}
