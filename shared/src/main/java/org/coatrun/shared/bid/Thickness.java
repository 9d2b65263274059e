package org.coatrun.shared.bid;

import java.util.Optional;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.units.Length;

/** What came of looking for a thickness. */
public sealed interface Thickness {

  /**
   * A thickness.
   *
   * @param exact by table or formula, before rounding and the least thickness
   * @param design what is to be sprayed
   * @param listing name of the listing, or empty where a rule states it outright
   * @param demonstration whether the listing is invented
   * @param reason the rows, or the formula with its numbers
   */
  record Given(Length exact, Length design, String listing, boolean demonstration, String reason)
      implements Thickness {}

  /** None is needed: zero hours, or not to be coated. */
  record NotNeeded(String reason) implements Thickness {}

  /** None can be given. */
  record Missing(WorkFinding code, String reason) implements Thickness {}

  /** The thickness to be sprayed, where one is given. */
  default Optional<Length> spray() {
    return this instanceof Given g ? Optional.of(g.design()) : Optional.empty();
  }

  /** Why, in a clause. */
  String reason();
}
