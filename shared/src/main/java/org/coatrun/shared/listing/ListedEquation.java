package org.coatrun.shared.listing;

import java.util.List;
import org.coatrun.shared.rules.ColumnEquation;
import org.coatrun.shared.rules.MemberKind;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.yaml.Key;

/** Column equation of a listing: R = [C1 (W/D) + C2] h (IBC 722.5.1.3). */
public record ListedEquation(
    @Key(note = "kinds of member it holds for", fallback = "[column]") List<MemberKind> kinds,
    @Key(note = "C1, minutes, inches, lb/ft/in", least = "0.001", most = "100000") double c1,
    @Key(note = "C2, minutes and inches", least = "-100000", most = "100000") double c2,
    @Key(note = "smallest W/D tested", least = "0.01", most = "100") double smallest,
    @Key(note = "largest W/D tested", least = "0.01", most = "100") double largest,
    @Key(note = "least rating tested", fallback = "1 h", least = "15 min", most = "4 h")
        FireDuration fromHours,
    @Key(note = "greatest rating tested", fallback = "4 h", least = "15 min", most = "4 h")
        FireDuration toHours) {

  /**
   * @throws IllegalArgumentException where ranges do not rise or the equation cannot be
   */
  public ListedEquation {
    kinds = List.copyOf(kinds);
    if (fromHours.compareTo(toHours) > 0) {
      throw new IllegalArgumentException("from-hours must not lie above to-hours");
    }
    c1 = new ColumnEquation(c1, c2, smallest, largest).c1();
  }

  /** The equation. */
  public ColumnEquation equation() {
    return new ColumnEquation(c1, c2, smallest, largest);
  }
}
