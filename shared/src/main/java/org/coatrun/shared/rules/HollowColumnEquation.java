package org.coatrun.shared.rules;

import java.util.Locale;
import java.util.Optional;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.SectionFactor;

/**
 * Hollow columns by the equation of their listing: R = C3 (A/P) h + C4, R in minutes, A/P and h in
 * inches.
 *
 * <p>Source: the form of ASCE/SEI/SFPE 29 and IBC 722.5.1 for tubes and pipes (from memory); the
 * constants come from the listing and hold within its tested range of A/P.
 *
 * @param c3 constant of the listing
 * @param c4 constant of the listing
 * @param smallest A/P tested, inches
 * @param largest A/P tested, inches
 */
public record HollowColumnEquation(double c3, double c4, double smallest, double largest) {

  public HollowColumnEquation {
    if (!(c3 > 0) || !Double.isFinite(c4) || !(smallest > 0) || !(largest > smallest)) {
      throw new IllegalArgumentException(
          "a hollow column equation needs c3 above 0 and a range of A/P that rises");
    }
  }

  /** Whether the factor lies within the tested range. */
  public boolean covers(SectionFactor factor) {
    double ap = factor.areaOverPerimeterInches();
    return ap >= smallest - 1e-9 && ap <= largest + 1e-9;
  }

  /** The thickness for a rating, not rounded, never below zero; empty outside the range. */
  public Optional<Length> thickness(SectionFactor factor, FireDuration rating) {
    if (!covers(factor)) {
      return Optional.empty();
    }
    double inches = (rating.minutes() - c4) / (c3 * factor.areaOverPerimeterInches());
    return Optional.of(Length.ofInches(Math.max(0, inches)));
  }

  /** The equation with the numbers of a member filled in. */
  public String filledIn(SectionFactor factor, FireDuration rating) {
    return String.format(
        Locale.ROOT,
        "h = (%s min - %s) / [%s x %.3f]",
        Numbers.plain(rating.minutes()),
        Numbers.plain(c4),
        Numbers.plain(c3),
        factor.areaOverPerimeterInches());
  }
}
