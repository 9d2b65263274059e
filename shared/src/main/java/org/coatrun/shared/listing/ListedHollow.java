package org.coatrun.shared.listing;

import org.coatrun.shared.rules.HollowColumnEquation;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.yaml.Key;

/** Hollow column equation of a listing: R = C3 (A/P) h + C4. */
public record ListedHollow(
    @Key(note = "C3, minutes and inches", least = "0.001", most = "100000") double c3,
    @Key(note = "C4, minutes", least = "-1000", most = "1000") double c4,
    @Key(note = "smallest A/P tested, in", least = "0.01", most = "20") double smallest,
    @Key(note = "largest A/P tested, in", least = "0.01", most = "20") double largest,
    @Key(note = "least rating tested", fallback = "1 h", least = "15 min", most = "4 h")
        FireDuration fromHours,
    @Key(note = "greatest rating tested", fallback = "4 h", least = "15 min", most = "4 h")
        FireDuration toHours) {

  /**
   * @throws IllegalArgumentException where ranges do not rise or the equation cannot be
   */
  public ListedHollow {
    if (fromHours.compareTo(toHours) > 0) {
      throw new IllegalArgumentException("from-hours must not lie above to-hours");
    }
    c3 = new HollowColumnEquation(c3, c4, smallest, largest).c3();
  }

  /** The equation. */
  public HollowColumnEquation equation() {
    return new HollowColumnEquation(c3, c4, smallest, largest);
  }
}
