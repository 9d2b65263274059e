package org.coatrun.cli.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.coatrun.shared.bid.amounts.BidAmounts;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.Totals;
import org.coatrun.shared.units.Area;

/**
 * The tables of a takeoff, as its CSV and JSON files have them.
 *
 * @param members one row for each member
 * @param decks one row for each deck
 * @param findings one row for each finding
 */
public record TakeoffTables(Table members, Table decks, Table findings) {

  /** The tables of one run. */
  public static TakeoffTables of(Results results) {
    Takeoff takeoff = results.takeoff();
    Sources sources = new Sources(takeoff.building());
    return new TakeoffTables(
        Table.of(MemberColumns.of(sources, results), takeoff.members()),
        Table.of(DeckColumns.of(sources, results), takeoff.decks()),
        Table.of(FindingColumns.ALL, takeoff.findings()));
  }

  /**
   * Sums of material by something; the columns are those of material.csv without its first.
   *
   * @param by floor, section, role, rule or kind, or job for the sum of all
   */
  public static Table material(BidAmounts amounts, String by) {
    List<Column<MaterialColumns.Row>> columns =
        MaterialColumns.ALL.subList(1, MaterialColumns.ALL.size());
    return Table.of(
        columns,
        MaterialColumns.rows(amounts).stream().filter(row -> row.by().equals(by)).toList());
  }

  /** Sums under a name for their groups; the columns are those of the JSON file. */
  public static Table sums(String group, Map<String, Totals> sums) {
    List<Column<Map.Entry<String, Totals>>> columns =
        List.of(
            Column.of(group, Map.Entry::getKey),
            column("all", Totals::all),
            column("counted", Totals::counted),
            column("left_out", Totals::leftOut),
            column("unresolved", Totals::unresolved),
            column("length_m", t -> Rounded.plain(t.length().metres())),
            column("weight_kg", t -> Rounded.plain(t.weight().kilograms())),
            column("body_m2", t -> fine(t.body())),
            column("inside_m2", t -> fine(t.inside())),
            column("ends_m2", t -> fine(t.ends())),
            column("holes_m2", t -> fine(t.holes())),
            column("covered_m2", t -> fine(t.covered())),
            column("exposed_m2", t -> fine(t.exposed())));
    return Table.of(columns, List.copyOf(sums.entrySet()));
  }

  private static Column<Map.Entry<String, Totals>> column(
      String name, Function<Totals, Object> value) {
    return Column.of(name, entry -> value.apply(entry.getValue()));
  }

  private static BigDecimal fine(Area area) {
    return Rounded.fine(area.squareMetres());
  }
}
