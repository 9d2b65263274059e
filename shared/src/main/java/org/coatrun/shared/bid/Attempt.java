package org.coatrun.shared.bid;

import java.util.Optional;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.units.Length;

/** What one way to a thickness gave, before rounding. */
sealed interface Attempt {

  /**
   * A thickness.
   *
   * @param reason rows, or formula with its numbers
   */
  record Found(Length exact, String reason) implements Attempt {}

  /** None, and why. */
  record Failed(WorkFinding code, String reason) implements Attempt {}

  /** This, or where it failed the other; of two failures the one that says more. */
  default Attempt or(Attempt other) {
    if (this instanceof Found) {
      return this;
    }
    return other instanceof Failed f && weight(((Failed) this).code()) <= weight(f.code())
        ? this
        : other;
  }

  /** Where the attempt gave a thickness. */
  default Optional<Found> found() {
    return this instanceof Found f ? Optional.of(f) : Optional.empty();
  }

  // What is nearest to a thickness says most.
  private static int weight(WorkFinding code) {
    return switch (code) {
      case OUTSIDE_TESTED_RANGE -> 0;
      case SUBSTITUTION_REFUSED -> 1;
      case NO_SECTION_FACTOR -> 2;
      default -> 3;
    };
  }
}
