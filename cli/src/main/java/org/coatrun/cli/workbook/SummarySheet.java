package org.coatrun.cli.workbook;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.coatrun.cli.report.Cautions;
import org.coatrun.cli.report.Results;
import org.coatrun.cli.spreadsheet.Cell;
import org.coatrun.cli.spreadsheet.Sheet;
import org.coatrun.cli.spreadsheet.Style;
import org.coatrun.shared.bid.amounts.BidAmounts;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.Totals;
import org.coatrun.shared.model.ModelFile;

/** The first sheet: what was taken off, in a few numbers. */
final class SummarySheet {

  private final List<List<Cell>> rows = new ArrayList<>();

  private SummarySheet() {}

  static Sheet of(Results results, Optional<BidSheets> bid) {
    Takeoff takeoff = results.takeoff();
    SummarySheet summary = new SummarySheet();
    summary.head(takeoff, Cautions.mark(results.cautions()));
    summary.ledger("Members", takeoff.memberTotals());
    summary.ledger("Decks", takeoff.deckTotals());
    bid.ifPresent(summary::bid);
    summary.end(results);
    List<List<Cell>> rows = List.copyOf(summary.rows);
    return new Sheet(
        "Summary", List.of(34, 18, 18, 60), 0, false, () -> Stream.of(rows).flatMap(List::stream));
  }

  private void head(Takeoff takeoff, Optional<String> mark) {
    String name = takeoff.building().name();
    mark.ifPresent(text -> rows.add(List.of(Cell.text(text, Style.BOLD))));
    rows.add(List.of(Cell.text(name.isEmpty() ? "Takeoff" : name, Style.TITLE)));
    for (ModelFile file : takeoff.building().files()) {
      rows.add(List.of(Cell.text("Model"), Cell.text(file.name())));
    }
  }

  private void ledger(String kind, Totals totals) {
    rows.add(List.of());
    rows.add(List.of(Cell.text(kind, Style.BOLD)));
    count("in the model", totals.all());
    count("counted", totals.counted());
    count("left out, with a reason", totals.leftOut());
    count("unresolved", totals.unresolved());
    amount("weight", totals.weight().kilograms(), "kg", totals.weight().pounds(), "lb");
    amount(
        "exposed surface",
        totals.exposed().squareMetres(),
        "m2",
        totals.exposed().squareFeet(),
        "ft2");
  }

  private void count(String what, int count) {
    rows.add(List.of(Cell.text(what), Cell.number(count, Style.WHOLE)));
  }

  private void amount(String what, double si, String siUnit, double us, String usUnit) {
    rows.add(
        List.of(
            Cell.text(what + ", " + siUnit + " and " + usUnit),
            Cell.number(si, Style.TENTH),
            Cell.number(us, Style.TENTH)));
  }

  private void bid(BidSheets bid) {
    BidAmounts amounts = bid.amounts();
    rows.add(List.of());
    rows.add(List.of(Cell.text("To be sprayed", Style.BOLD)));
    count("elements", amounts.material().elements());
    count("elements without a thickness", amounts.material().elementsWithoutThickness());
    formula("bags", bid.bags(), BigDecimal.valueOf(amounts.order().bags()), Style.WHOLE);
    formula("crew hours", bid.crewHours(), hours(amounts), Style.TENTH);
    formula("working days", bid.days(), days(amounts), Style.WHOLE);
    count("thickness readings", (int) amounts.inspection().readings());
    String money = "total, " + amounts.money().currency();
    formula(money, bid.total(), amounts.money().total(), Style.HUNDREDTH);
    if (!amounts.money().complete()) {
      rows.add(List.of(Cell.text("The total lacks: " + amounts.money().lacks() + ".")));
    }
  }

  private static BigDecimal hours(BidAmounts amounts) {
    return BigDecimal.valueOf(amounts.labour().total().crewHours());
  }

  private static BigDecimal days(BidAmounts amounts) {
    return BigDecimal.valueOf(amounts.programme().workingDays());
  }

  private void formula(String what, String formula, BigDecimal value, Style style) {
    rows.add(List.of(Cell.text(what), Cell.formula(formula, value, style)));
  }

  private void end(Results results) {
    rows.add(List.of());
    rows.add(
        List.of(
            Cell.text("Findings"), Cell.number(results.takeoff().findings().size(), Style.WHOLE)));
    rows.add(List.of());
    results.cautions().forEach(caution -> rows.add(List.of(Cell.text(caution))));
  }
}
