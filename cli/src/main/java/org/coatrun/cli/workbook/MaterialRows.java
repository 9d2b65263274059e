package org.coatrun.cli.workbook;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.coatrun.cli.spreadsheet.Cell;
import org.coatrun.cli.spreadsheet.Sheet;
import org.coatrun.cli.spreadsheet.Style;
import org.coatrun.shared.bid.amounts.BidAmounts;
import org.coatrun.shared.bid.material.CoatKind;
import org.coatrun.shared.bid.material.MaterialLine;
import org.coatrun.shared.bid.material.MaterialOrder;
import org.coatrun.shared.bid.material.MaterialSum;
import org.coatrun.shared.bid.material.WorkFloor;
import org.coatrun.shared.job.Job;

/** The sheet of material: by floor and kind, with losses and bags by the rates, then the order. */
final class MaterialRows {

  private static final int IN_PLACE = 7;
  private static final int BONDING = 6;
  private static final int SPRAYED = 9;
  private static final int BAGS = 10;
  private static final int FILL = 11;

  private final SheetRows rows;
  private final Map<String, int[]> floors = new LinkedHashMap<>();
  private final BidAmounts amounts;
  private final Job job;
  private final Rates rates;
  private int totalRow;
  private int bagsRow;
  private int gallonsRow;

  MaterialRows(BidAmounts amounts, Job job, Rates rates, Optional<String> mark) {
    rows = new SheetRows("Material", mark);
    this.amounts = amounts;
    this.job = job;
    this.rates = rates;
    floors();
    order();
    others();
  }

  /** Exact bags of a floor, for formulas of other sheets. */
  String bags(String floor) {
    int[] range = floors.get(floor);
    return "SUM("
        + rows.reference(range[0], BAGS)
        + ":"
        + rows.reference(range[1], BAGS).replaceFirst("^.*!", "")
        + ")";
  }

  /** Whole bags of the job. */
  String wholeBags() {
    return rows.reference(bagsRow, 2);
  }

  /** Whole gallons of bonding coat. */
  String wholeGallons() {
    return rows.reference(gallonsRow, 2);
  }

  Sheet sheet() {
    return rows.sheet(28, 28, 10, 12, 12, 14, 14, 10, 14, 12, 14);
  }

  private void floors() {
    rows.add(Cell.text("Material by working floor and kind", Style.TITLE));
    rows.head(
        "working floor",
        "kind",
        "pieces",
        "area_m2",
        "area_ft2",
        "bonding coat_ft2",
        "in place_bf",
        "waste",
        "sprayed_bf",
        "bags",
        "of in place, fills flutes_bf");
    int first = rows.next();
    Map<String, List<MaterialLine>> byFloor =
        amounts.material().lines().stream().collect(Collectors.groupingBy(MaterialLine::floor));
    for (WorkFloor floor : amounts.material().floors()) {
      List<MaterialLine> lines = byFloor.getOrDefault(floor.name(), List.of());
      if (!lines.isEmpty()) {
        int from = rows.next();
        kinds(lines).forEach((kind, group) -> row(floor.name(), kind, group));
        floors.put(floor.name(), new int[] {from, rows.next() - 1});
      }
    }
    sums(first, rows.next() - 1);
  }

  private static Map<CoatKind, MaterialSum> kinds(List<MaterialLine> lines) {
    Map<CoatKind, List<MaterialLine>> groups =
        lines.stream()
            .collect(Collectors.groupingBy(MaterialLine::kind, TreeMap::new, Collectors.toList()));
    Map<CoatKind, MaterialSum> sums = new TreeMap<>();
    groups.forEach((kind, group) -> sums.put(kind, MaterialSum.of(group)));
    return sums;
  }

  private void row(String floor, CoatKind kind, MaterialSum sum) {
    int row = rows.next();
    double exact = MaterialOrder.of(sum, job.material()).exactBags();
    rows.add(
        Cell.text(floor.isEmpty() ? "(none)" : floor),
        Cell.text(kind.word()),
        Cell.number(sum.pieces(), Style.WHOLE),
        Cell.number(sum.area().squareMetres(), Style.HUNDREDTH),
        Cell.number(sum.area().squareFeet(), Style.HUNDREDTH),
        Cell.number(sum.bonding().squareFeet(), Style.HUNDREDTH),
        Cell.number(sum.inPlace().boardFeet(), Style.HUNDREDTH),
        Cell.formula(
            rates.cell(Rates.waste(kind)),
            BigDecimal.valueOf(kind.waste(job.material().waste()).fraction()),
            Style.PERCENT),
        Cell.formula(
            "G" + row + "/(1-H" + row + ")",
            BigDecimal.valueOf(sum.sprayed().boardFeet()),
            Style.HUNDREDTH),
        Cell.formula(
            "I" + row + "/" + rates.cell(Rates.YIELD), BigDecimal.valueOf(exact), Style.HUNDREDTH),
        Cell.number(sum.fluteFill().boardFeet(), Style.HUNDREDTH));
  }

  private void sums(int first, int last) {
    MaterialSum all = amounts.material().total();
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.text("All", Style.SUM_TEXT));
    cells.add(Cell.text("", Style.SUM_TEXT));
    cells.add(sum(3, first, last, BigDecimal.valueOf(all.pieces()), Style.SUM_WHOLE));
    cells.add(sum(4, first, last, all.area().squareMetres()));
    cells.add(sum(5, first, last, all.area().squareFeet()));
    cells.add(sum(BONDING, first, last, all.bonding().squareFeet()));
    cells.add(sum(IN_PLACE, first, last, all.inPlace().boardFeet()));
    cells.add(Cell.text("", Style.SUM_TEXT));
    cells.add(sum(SPRAYED, first, last, all.sprayed().boardFeet()));
    cells.add(sum(BAGS, first, last, amounts.order().exactBags()));
    cells.add(sum(FILL, first, last, all.fluteFill().boardFeet()));
    totalRow = rows.add(cells);
  }

  private static Cell sum(int column, int first, int last, double value) {
    return sum(column, first, last, BigDecimal.valueOf(value), Style.SUM_HUNDREDTH);
  }

  private static Cell sum(int column, int first, int last, BigDecimal value, Style style) {
    return Cell.formula(SheetRows.sum(column, first, last), value, style);
  }

  private void order() {
    MaterialOrder order = amounts.order();
    rows.title("The order");
    rows.head("what", "amount", "unit");
    volumes();
    bagsRow = line("bags", whole("J" + totalRow), order.bags(), "bags");
    String pallets = "ROUNDUP(B" + bagsRow + "/" + rates.cell("material.bags-per-pallet") + ",0)";
    int palletsRow = line("pallets", pallets, order.pallets(), "pallets");
    String ordered = "B" + bagsRow + "*" + rates.cell("material.bag");
    amount("weight of the bags", ordered, order.ordered().pounds(), "lb");
    String dry = "G" + totalRow + "/12*" + rates.cell("material.density");
    amount("dry weight in place", dry, order.dry().pounds(), "lb");
    String water = ordered + "*" + rates.cell("material.water-ratio") + "/8.34";
    amount("water", water, order.water().usGallons(), "gal");
    String gallons = "F" + totalRow + "/" + rates.cell("material.bonding-coverage");
    gallonsRow = line("bonding coat", whole(gallons), order.wholeBondingGallons(), "gal");
    rows.add(
        Cell.text("truckloads, by weight"),
        Cell.number(order.truckloads(), Style.WHOLE),
        Cell.text("as planned; does not follow the rates"));
    String stacks = "ROUNDUP(B" + palletsRow + "/" + rates.cell("material.pallets-high") + ",0)";
    String storage = stacks + "*" + rates.cell("material.pallet-area");
    amount("storage for all bags at once", storage, order.storage().squareFeet(), "ft2");
  }

  /** Board feet both ways, and what a bag gives. */
  private void volumes() {
    MaterialSum all = amounts.material().total();
    bf("in place by area x thickness", all.byArea().boardFeet());
    bf("in place by the true offset volume", all.byOffset().boardFeet());
    double theoretical = amounts.order().theoreticalYield().boardFeet();
    amount("a bag in place where nothing is lost", rates.cell(Rates.YIELD), theoretical, "bf");
    String adjusted =
        "IF(J"
            + totalRow
            + ">0,G"
            + totalRow
            + "/J"
            + totalRow
            + ","
            + rates.cell(Rates.YIELD)
            + ")";
    double lossy = amounts.order().adjustedYield().boardFeet();
    amount("a bag in place with the losses of this job", adjusted, lossy, "bf");
  }

  private void bf(String what, double value) {
    rows.add(Cell.text(what), Cell.number(value, Style.TENTH), Cell.text("bf"));
  }

  /** Made whole as the program does it: a billionth over does not count. */
  static String whole(String formula) {
    return "ROUNDUP(MAX(0," + formula + "-0.000000001),0)";
  }

  private int line(String what, String formula, long value, String unit) {
    return rows.add(
        Cell.text(what),
        Cell.formula(formula, BigDecimal.valueOf(value), Style.WHOLE),
        Cell.text(unit));
  }

  private void amount(String what, String formula, double value, String unit) {
    rows.add(
        Cell.text(what),
        Cell.formula(formula, BigDecimal.valueOf(value), Style.TENTH),
        Cell.text(unit));
  }

  private void others() {
    int without = amounts.material().elementsWithoutThickness();
    if (without > 0) {
      rows.add();
      rows.add(
          Cell.text(
              without
                  + " elements must be coated and have no thickness: they are in no amount. See the"
                  + " findings.",
              Style.BOLD));
    }
  }
}
