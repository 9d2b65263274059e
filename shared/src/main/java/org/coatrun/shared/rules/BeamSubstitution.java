package org.coatrun.shared.rules;

import java.util.Locale;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.SectionFactor;

/**
 * A beam in place of the listed one: h2 = h1 (W1/D1 + 0.60) / (W2/D2 + 0.60).
 *
 * <p>Source: IBC 722.5.2.2 with its limits 722.5.2.2.1 (1) to (4); the equation also in
 * ASCE/SEI/SFPE 29. Here 1 is always the listed beam and 2 the beam in hand.
 */
public final class BeamSubstitution {

  /** Least W/D of the beam in hand, lb/ft/in (limit 1). */
  public static final double LEAST_WEIGHT_OVER_PERIMETER = 0.37;

  /** Least thickness on the beam in hand (limit 2). */
  public static final Length LEAST_THICKNESS = Length.ofInches(0.375);

  /** Least rating of the beam (limit 3). */
  public static final FireDuration LEAST_RATING = FireDuration.ofHours(1);

  private static final double OFFSET = 0.60;

  /** What came of a substitution. */
  public sealed interface Outcome {

    /**
     * Allowed.
     *
     * @param thickness by the equation, or the least thickness where that governs
     * @param formula the equation with its numbers filled in
     */
    record Allowed(Length thickness, String formula) implements Outcome {}

    /**
     * Not allowed.
     *
     * @param reason the limit that forbids it, with the number of this beam
     */
    record Refused(String reason) implements Outcome {}
  }

  /**
   * The beam in hand.
   *
   * @param factor its W/D
   * @param rating hours asked
   * @param restrained whether a restrained rating is used
   * @param compact whether its section is known to be compact (AISC 360)
   */
  public record InHand(
      SectionFactor factor, FireDuration rating, boolean restrained, boolean compact) {}

  private BeamSubstitution() {}

  /** The equation alone, without limits or rounding. */
  public static Length equation(
      Length listedThickness, SectionFactor listed, SectionFactor inHand) {
    return listedThickness.times(
        (listed.weightOverPerimeter() + OFFSET) / (inHand.weightOverPerimeter() + OFFSET));
  }

  /** The thickness for the beam in hand within the four limits, not yet rounded. */
  public static Outcome thickness(Length listedThickness, SectionFactor listed, InHand beam) {
    if (beam.factor().weightOverPerimeter() < LEAST_WEIGHT_OVER_PERIMETER - 1e-9) {
      return refused(
          "W/D %.3f is under 0.37 (IBC 722.5.2.2.1, limit 1)", beam.factor().weightOverPerimeter());
    }
    if (beam.rating().compareTo(LEAST_RATING) < 0) {
      return refused(
          "a rating of %.2f h is under 1 h (IBC 722.5.2.2.1, limit 3)", beam.rating().hours());
    }
    if (beam.restrained() && !beam.compact()) {
      return refused(
          "restrained, and the section is not known to be compact (IBC 722.5.2.2.1, limit 4)");
    }
    return allowed(listedThickness, listed, beam.factor());
  }

  private static Outcome allowed(Length h1, SectionFactor listed, SectionFactor inHand) {
    Length h2 = equation(h1, listed, inHand);
    String formula =
        String.format(
            Locale.ROOT,
            "h2 = %s in x (%.3f + 0.60) / (%.3f + 0.60) = %.4f in (IBC 722.5.2.2)",
            Numbers.inches(h1.inches()),
            listed.weightOverPerimeter(),
            inHand.weightOverPerimeter(),
            h2.inches());
    if (h2.compareTo(LEAST_THICKNESS) < 0) {
      return new Outcome.Allowed(LEAST_THICKNESS, formula + ", least 3/8 in governs (limit 2)");
    }
    return new Outcome.Allowed(h2, formula);
  }

  private static Outcome refused(String format, Object... numbers) {
    return new Outcome.Refused(String.format(Locale.ROOT, format, numbers));
  }
}
