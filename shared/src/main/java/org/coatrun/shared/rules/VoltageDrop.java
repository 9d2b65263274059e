package org.coatrun.shared.rules;

import org.coatrun.shared.units.Length;

/**
 * Voltage drop on a feeder.
 *
 * <p>Sources: NEC chapter 9 Table 8 (resistance); UFC 3-520-01 B-2.1 (drop to neutral with power
 * factor); the circular-mil form of electricians' texts. Guidance: 3 % on a branch, 5 % in all
 * (notes to NEC 210.19 and 215.2). All one-way lengths.
 */
public final class VoltageDrop {

  /** Guidance for a branch circuit, per cent. */
  public static final double BRANCH_PERCENT = 3;

  /** Guidance for feeder and branch together, per cent. */
  public static final double TOTAL_PERCENT = 5;

  /** Power factor where none is known (UFC 3-520-01). */
  public static final double POWER_FACTOR = 0.8;

  private static final double COPPER_K = 12.9;
  private static final double SQRT_3 = Math.sqrt(3);

  private VoltageDrop() {}

  /** Volts lost between phases of a three-phase feeder, by resistance alone. */
  public static double threePhase(double amperes, Conductor conductor, Length oneWay) {
    return SQRT_3 * amperes * ohms(conductor, oneWay);
  }

  /** Volts lost on a single-phase circuit, out and back, by resistance alone. */
  public static double singlePhase(double amperes, Conductor conductor, Length oneWay) {
    return 2 * amperes * ohms(conductor, oneWay);
  }

  /**
   * Volts lost between phases with power factor: sqrt(3) I (R cos f + X sin f).
   *
   * @param ohmsPerThousandFeet resistance to neutral, NEC Table 9
   * @param reactancePerThousandFeet reactance to neutral, NEC Table 9
   */
  public static double threePhase(
      double amperes,
      double ohmsPerThousandFeet,
      double reactancePerThousandFeet,
      double powerFactor,
      Length oneWay) {
    double sine = Math.sqrt(1 - powerFactor * powerFactor);
    double perThousand = ohmsPerThousandFeet * powerFactor + reactancePerThousandFeet * sine;
    return SQRT_3 * amperes * perThousand * oneWay.feet() / 1000;
  }

  /** The circular-mil form for copper at 75 C: 1.732 x 12.9 I L / CM. */
  public static double threePhaseByMils(double amperes, Conductor conductor, Length oneWay) {
    return SQRT_3 * COPPER_K * amperes * oneWay.feet() / conductor.circularMils();
  }

  /** A drop in per cent of the line's voltage. */
  public static double percent(double drop, double volts) {
    return 100 * drop / volts;
  }

  private static double ohms(Conductor conductor, Length oneWay) {
    return conductor.ohmsPerThousandFeet() * oneWay.feet() / 1000;
  }
}
