package org.coatrun.shared.listing;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.rules.FactorTable;
import org.coatrun.shared.rules.MemberKind;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Temperature;
import org.coatrun.shared.yaml.Key;

/** Thickness by section factor for some kinds of member and one rating. */
public record ListedTable(
    @Key(note = "kinds of member it holds for") List<MemberKind> kinds,
    @Key(note = "form of the section factor: W/D, A/P or Hp/A") FactorForm by,
    @Key(note = "restrained, unrestrained or either", fallback = "either") Restraint restraint,
    @Key(note = "rating", least = "15 min", most = "4 h") FireDuration hours,
    @Key(
            note = "critical temperature it was worked out for; not stated: it does not go by one",
            least = "300 C",
            most = "800 C")
        Optional<Temperature> criticalTemperature,
    @Key(note = "tested rows") List<ListedRow> rows) {

  /**
   * @throws IllegalArgumentException without kinds or rows, or with a factor twice
   */
  public ListedTable {
    kinds = List.copyOf(kinds);
    rows = List.copyOf(rows);
    if (kinds.isEmpty()) {
      throw new IllegalArgumentException("a table names at least one kind of member");
    }
    if (rows.isEmpty()) {
      throw new IllegalArgumentException("a table needs at least one row");
    }
    if (table(rows).rows().size() != rows.size()) {
      throw new IllegalArgumentException("a table lost rows");
    }
  }

  /** The rows, ready to be read between. */
  public FactorTable table() {
    return table(rows);
  }

  private static FactorTable table(List<ListedRow> rows) {
    return new FactorTable(
        rows.stream().map(r -> new FactorTable.Row(r.factor(), r.thickness())).toList());
  }
}
