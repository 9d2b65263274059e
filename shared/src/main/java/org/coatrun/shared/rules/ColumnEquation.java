package org.coatrun.shared.rules;

import java.util.Locale;
import java.util.Optional;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.SectionFactor;

/**
 * Columns by the equation of their listing: R = [C1 (W/D) + C2] h, R in minutes, h in inches, W/D
 * in lb/ft/in.
 *
 * <p>Source: IBC 722.5.1.3 and 722.5.1.3.1: the constants come from fire tests and hold between the
 * smallest and the largest W/D tested. Not for intumescent or mastic coatings.
 *
 * @param c1 constant of the listing
 * @param c2 constant of the listing
 * @param smallest W/D tested
 * @param largest W/D tested
 */
public record ColumnEquation(double c1, double c2, double smallest, double largest) {

  public ColumnEquation {
    if (!(c1 > 0) || !Double.isFinite(c2) || !(smallest > 0) || !(largest > smallest)) {
      throw new IllegalArgumentException(
          "a column equation needs c1 above 0 and a range of W/D that rises");
    }
    if (!(c1 * smallest + c2 > 0)) {
      throw new IllegalArgumentException("C1 (W/D) + C2 is not positive over the tested range");
    }
  }

  /** Whether the factor lies within the tested range. */
  public boolean covers(SectionFactor factor) {
    double wd = factor.weightOverPerimeter();
    return wd >= smallest - 1e-9 && wd <= largest + 1e-9;
  }

  /** The thickness for a rating, not rounded; empty outside the tested range. */
  public Optional<Length> thickness(SectionFactor factor, FireDuration rating) {
    if (!covers(factor)) {
      return Optional.empty();
    }
    return Optional.of(
        Length.ofInches(rating.minutes() / (c1 * factor.weightOverPerimeter() + c2)));
  }

  /** The rating that a thickness gives; empty outside the tested range. */
  public Optional<FireDuration> rating(SectionFactor factor, Length thickness) {
    if (!covers(factor)) {
      return Optional.empty();
    }
    return Optional.of(
        FireDuration.ofMinutes((c1 * factor.weightOverPerimeter() + c2) * thickness.inches()));
  }

  /** The equation with the numbers of a member filled in. */
  public String filledIn(SectionFactor factor, FireDuration rating) {
    return String.format(
        Locale.ROOT,
        "h = %s min / [%s x %.3f + %s] (IBC 722.5.1.3)",
        Numbers.plain(rating.minutes()),
        Numbers.plain(c1),
        factor.weightOverPerimeter(),
        Numbers.plain(c2));
  }
}
