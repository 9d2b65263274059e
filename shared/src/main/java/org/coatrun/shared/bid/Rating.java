package org.coatrun.shared.bid;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.coatrun.shared.listing.Restraint;
import org.coatrun.shared.units.FireDuration;

/**
 * What a thickness is looked for.
 *
 * @param hours above zero
 * @param restrained whether restrained entries serve
 */
record Rating(FireDuration hours, boolean restrained) {

  private static final double SAME_MINUTES = 1e-6;

  /** Whether an entry serves: an unrestrained one also where restrained would do. */
  boolean serves(Restraint restraint) {
    return restrained || restraint.serves(false);
  }

  /**
   * The entries to use: of those that are listed for these hours or more, the fewest hours; a
   * longer rating holds for a shorter one.
   */
  <T> List<T> fewest(List<T> entries, Function<T, FireDuration> hoursOf) {
    Optional<FireDuration> least =
        entries.stream()
            .map(hoursOf)
            .filter(h -> h.minutes() >= hours.minutes() - SAME_MINUTES)
            .min(Comparator.naturalOrder());
    return entries.stream()
        .filter(
            e ->
                least
                    .map(l -> Math.abs(hoursOf.apply(e).minutes() - l.minutes()) < SAME_MINUTES)
                    .orElse(false))
        .toList();
  }

  /** The hours of an entry in words, and that they hold for these where they are more. */
  String listed(FireDuration listed) {
    return listed.minutes() > hours.minutes() + SAME_MINUTES
        ? Shown.hours(listed) + " (listed for more than " + Shown.hours(hours) + ")"
        : Shown.hours(listed);
  }
}
