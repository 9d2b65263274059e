package org.coatrun.shared.rules;

import java.util.List;
import org.coatrun.shared.units.Length;

/**
 * Judges thickness readings by two rules, each apart: a member may pass one and fail the other.
 *
 * <p>The averaging rule (ASTM E605 8.1; UFGS 07 81 00 3.4): a reading above the design by more than
 * 1/4 in counts as design + 1/4 in; the average must reach the design; no reading may lie under the
 * design by more than 1/4 in (design 1 in or more) or 25 % (under 1 in). The 10 % rule (IBC 2009
 * and later, 1705.14.4 of 2018): not more than 10 % of the readings under the design.
 */
public final class ThicknessJudge {

  private static final Length INCH = Length.ofInches(1);
  private static final Length QUARTER = Length.ofInches(0.25);
  private static final double QUARTER_PART = 0.25;
  private static final double SHARE = 0.10;

  /** Readings are taken to 1/16 in or 1 mm; a nanometre is noise of arithmetic. */
  private static final double NOISE_METRES = 1e-9;

  /**
   * What the averaging rule says.
   *
   * @param average of the readings, those too thick capped
   * @param lowest reading
   * @param lowestAllowed by the design thickness
   */
  public record Averaging(Length average, Length lowest, Length lowestAllowed, boolean passes) {}

  /** What the 10 % rule says. */
  public record TenPercent(long below, long readings, boolean passes) {}

  private ThicknessJudge() {}

  /** The lowest single reading that a design allows. */
  public static Length lowestAllowed(Length design) {
    return isUnder(design, INCH) ? design.times(1 - QUARTER_PART) : design.minus(QUARTER);
  }

  /** A reading as it counts in the average. */
  public static Length capped(Length reading, Length design) {
    Length cap = design.plus(QUARTER);
    return reading.compareTo(cap) > 0 ? cap : reading;
  }

  /**
   * The averaging rule.
   *
   * @throws IllegalArgumentException without readings
   */
  public static Averaging averaging(Length design, List<Length> readings) {
    requireSome(readings);
    double sum = readings.stream().mapToDouble(r -> capped(r, design).metres()).sum();
    Length average = Length.ofMetres(sum / readings.size());
    Length lowest = readings.stream().min(Length::compareTo).orElseThrow();
    Length allowed = lowestAllowed(design);
    return new Averaging(
        average, lowest, allowed, !isUnder(average, design) && !isUnder(lowest, allowed));
  }

  /**
   * The 10 % rule.
   *
   * @throws IllegalArgumentException without readings
   */
  public static TenPercent tenPercent(Length design, List<Length> readings) {
    requireSome(readings);
    long below = readings.stream().filter(r -> isUnder(r, design)).count();
    return new TenPercent(below, readings.size(), withinTenPercent(below, readings.size()));
  }

  /** Whether not more than 10 % of readings lie under the design. */
  public static boolean withinTenPercent(long below, long readings) {
    return below <= SHARE * readings + 1e-12;
  }

  /** Whether a thickness is less than another by more than the noise of arithmetic. */
  public static boolean isUnder(Length a, Length b) {
    return a.metres() < b.metres() - NOISE_METRES;
  }

  private static void requireSome(List<Length> readings) {
    if (readings.isEmpty()) {
      throw new IllegalArgumentException("no readings to judge");
    }
  }
}
