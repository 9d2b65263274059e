package org.coatrun.shared.bid;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.listing.FactorForm;
import org.coatrun.shared.listing.ListedTable;
import org.coatrun.shared.listing.Listing;
import org.coatrun.shared.listing.Restraint;
import org.coatrun.shared.rules.FactorTable;
import org.coatrun.shared.rules.Numbers;
import org.coatrun.shared.units.SectionFactor;
import org.coatrun.shared.units.Temperature;

/** Thickness from the tables of a listing: linear between tested rows, never beyond them. */
final class TableWay {

  private final Listing listing;
  private final Temperature critical;

  /**
   * @param critical steel temperature that tables worked out for one may not exceed
   */
  TableWay(Listing listing, Temperature critical) {
    this.listing = listing;
    this.critical = critical;
  }

  Attempt thickness(CoatedMember member, Rating rating) {
    Attempt best = new Attempt.Failed(WorkFinding.NO_LISTING_ENTRY, "no table");
    for (ListedTable table : tables(member, rating)) {
      best = best.or(read(table, member, rating));
    }
    return best;
  }

  /** Tables that may be read, those for restrained members first where they serve. */
  private List<ListedTable> tables(CoatedMember member, Rating rating) {
    List<ListedTable> fit =
        listing.tables().stream()
            .filter(t -> t.kinds().contains(member.kind()) && rating.serves(t.restraint()))
            .filter(t -> t.criticalTemperature().map(this::holds).orElse(true))
            .toList();
    return rating.fewest(fit, ListedTable::hours).stream()
        .sorted(
            Comparator.comparing((ListedTable t) -> t.restraint() != Restraint.RESTRAINED)
                .thenComparing(TableWay::celsius, Comparator.reverseOrder()))
        .toList();
  }

  // A table for cooler steel gives more material, one for hotter steel too little.
  private boolean holds(Temperature table) {
    return table.celsius() <= critical.celsius() + 1e-9;
  }

  private static double celsius(ListedTable table) {
    return table.criticalTemperature().map(Temperature::celsius).orElse(0.0);
  }

  private Attempt read(ListedTable table, CoatedMember member, Rating rating) {
    Optional<SectionFactor> factor =
        table.by() == FactorForm.W_D ? member.byWeight() : member.byArea();
    if (factor.isEmpty()) {
      return new Attempt.Failed(
          WorkFinding.NO_SECTION_FACTOR,
          "it has no " + table.by() + " to read " + head(table, member, rating) + " by");
    }
    double value = Shown.factor(factor.get(), table.by());
    FactorTable.Reading reading = table.table().at(value);
    String by = Shown.factor(value, table.by());
    if (reading instanceof FactorTable.Reading.Outside out) {
      return new Attempt.Failed(
          WorkFinding.OUTSIDE_TESTED_RANGE,
          by
              + " lies outside the rows of "
              + head(table, member, rating)
              + "; the nearest is "
              + row(out.nearest()));
    }
    FactorTable.Reading.Between in = (FactorTable.Reading.Between) reading;
    String where =
        in.lower().equals(in.upper())
            ? " is the row " + row(in.lower())
            : " between " + row(in.lower()) + " and " + row(in.upper());
    return new Attempt.Found(
        in.thickness(),
        by
            + where
            + " of "
            + head(table, member, rating)
            + ": "
            + Shown.exact(in.thickness(), listing));
  }

  private String row(FactorTable.Row row) {
    return Numbers.plain(row.factor()) + " (" + Shown.thickness(row.thickness(), listing) + ")";
  }

  private String head(ListedTable table, CoatedMember member, Rating rating) {
    String restraint =
        table.restraint() == Restraint.EITHER
            ? ""
            : table.restraint() == Restraint.RESTRAINED ? ", restrained" : ", unrestrained";
    String temperature =
        table
            .criticalTemperature()
            .map(t -> ", " + Numbers.plain(t.celsius()) + " \u00b0C")
            .orElse("");
    return listing.name()
        + " for "
        + member.kind().word()
        + ", "
        + rating.listed(table.hours())
        + restraint
        + temperature;
  }
}
