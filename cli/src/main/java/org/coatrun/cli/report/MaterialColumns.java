package org.coatrun.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.coatrun.shared.bid.amounts.BidAmounts;
import org.coatrun.shared.bid.material.MaterialBill;
import org.coatrun.shared.bid.material.MaterialSum;
import org.coatrun.shared.rules.Bags;

/** The rows of material.csv: the material of the job, and its sums by floor, section and so on. */
final class MaterialColumns {

  /**
   * A sum of material.
   *
   * @param by what it is a sum by: job, floor, section, role, rule or kind
   * @param bags as a fraction; bags are whole for the job alone
   */
  record Row(String by, String name, MaterialSum sum, double bags) {}

  static final List<Column<Row>> ALL =
      List.of(
          Column.of("by", Row::by),
          Column.of("name", Row::name),
          Column.of("pieces", row -> row.sum().pieces()),
          Column.of("area_m2", row -> Rounded.fine(row.sum().area().squareMetres())),
          Column.of("flute_fill_m3", row -> Rounded.fine(row.sum().fluteFill().cubicMetres())),
          Column.of("by_area_m3", row -> Rounded.fine(row.sum().byArea().cubicMetres())),
          Column.of("by_offset_m3", row -> Rounded.fine(row.sum().byOffset().cubicMetres())),
          Column.of("in_place_m3", row -> Rounded.fine(row.sum().inPlace().cubicMetres())),
          Column.of("sprayed_m3", row -> Rounded.fine(row.sum().sprayed().cubicMetres())),
          Column.of("bonding_coat_m2", row -> Rounded.fine(row.sum().bonding().squareMetres())),
          Column.of("area_ft2", row -> Rounded.plain(row.sum().area().squareFeet())),
          Column.of("board_feet", row -> Rounded.plain(row.sum().byArea().boardFeet())),
          Column.of("board_feet_offset", row -> Rounded.plain(row.sum().byOffset().boardFeet())),
          Column.of("bags", row -> Rounded.plain(row.bags())));

  private MaterialColumns() {}

  static List<Row> rows(BidAmounts amounts) {
    MaterialBill bill = amounts.material();
    List<Row> rows = new ArrayList<>();
    rows.add(row(amounts, "job", "", bill.total()));
    add(rows, amounts, "floor", bill.byFloor());
    add(rows, amounts, "section", bill.bySection());
    add(rows, amounts, "role", bill.byRole());
    add(rows, amounts, "rule", bill.byRule());
    add(rows, amounts, "kind", bill.byKind());
    return rows;
  }

  private static void add(
      List<Row> rows, BidAmounts amounts, String by, Map<String, MaterialSum> sums) {
    sums.forEach((name, sum) -> rows.add(row(amounts, by, name, sum)));
  }

  private static Row row(BidAmounts amounts, String by, String name, MaterialSum sum) {
    return new Row(by, name, sum, Bags.exact(sum.sprayed(), amounts.order().theoreticalYield()));
  }
}
