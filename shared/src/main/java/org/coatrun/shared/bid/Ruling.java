package org.coatrun.shared.bid;

import java.util.Optional;
import org.coatrun.shared.units.FireDuration;

/**
 * What rules and table decide for an element, before its thickness.
 *
 * @param hours the rating; empty where nothing states one
 * @param decidedBy the rule that decided the hours: its label or number, or the table's row
 * @param reason why, with the table's footnotes or the rule's own reason
 * @param bare what of the job file leaves it without a coat, where something does
 * @param restrained whether restrained ratings of the listing serve
 * @param listing name of the listing to use, where one is named
 * @param thickness stated outright, with what states it
 */
public record Ruling(
    Optional<FireDuration> hours,
    String decidedBy,
    String reason,
    Optional<String> bare,
    boolean restrained,
    Optional<String> listing,
    Optional<StatedThickness> thickness) {

  /** Whether it is to be coated. */
  public boolean coat() {
    return bare.isEmpty();
  }
}
