package org.coatrun.cli.workbook;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.cli.spreadsheet.Cell;
import org.coatrun.cli.spreadsheet.Sheet;
import org.coatrun.cli.spreadsheet.Style;
import org.coatrun.shared.bid.amounts.AlternateAmounts;
import org.coatrun.shared.bid.amounts.BidAmounts;
import org.coatrun.shared.bid.amounts.CostItem;
import org.coatrun.shared.bid.amounts.CostSheet;
import org.coatrun.shared.bid.amounts.Headline;

/** The sheet of money: amounts by the rates, prices, and what they come to. */
final class MoneyRows {

  private static final int COST = 5;

  private final SheetRows rows;
  private final BidAmounts amounts;
  private final Rates rates;
  private int totalRow;

  MoneyRows(
      BidAmounts amounts,
      Rates rates,
      MaterialRows material,
      LabourRows labour,
      String days,
      Optional<String> mark) {
    rows = new SheetRows("Money", mark);
    this.amounts = amounts;
    this.rates = rates;
    Map<String, String> formulas =
        Map.of(
            "prices.bag", material.wholeBags(),
            "prices.bonding-gallon", material.wholeGallons(),
            "prices.person-hour", labour.crewHours() + "*" + rates.cell("labour.crew"),
            "prices.machine-day", days + "*" + rates.cell("machine.machines"),
            "prices.lift-day", labour.liftDays());
    items(formulas);
    alternates();
  }

  /** What the job comes to. */
  String total() {
    return rows.reference(totalRow, COST);
  }

  Sheet sheet() {
    return rows.sheet(34, 16, 14, 16, 18, 40, 14, 14, 18, 18);
  }

  private void items(Map<String, String> formulas) {
    CostSheet money = amounts.money();
    rows.add(Cell.text("Money, in " + money.currency(), Style.TITLE));
    rows.head("item", "amount", "unit", "price", "cost", "");
    int first = rows.next();
    money.items().forEach(item -> item(item, formulas));
    int last = rows.next() - 1;
    int cost = line("cost", SheetRows.sum(COST, first, last), money.cost());
    String overhead = "ROUND(E" + cost + "*" + rates.cell("prices.overhead") + ",2)";
    int over = line("overhead", overhead, money.overhead());
    String profit = "ROUND((E" + cost + "+E" + over + ")*" + rates.cell("prices.profit") + ",2)";
    line("profit", profit, money.profit());
    totalRow = line("total", "SUM(E" + cost + ":E" + (cost + 2) + ")", money.total());
    if (!money.complete()) {
      rows.add(Cell.text("The total lacks: " + money.lacks() + ".", Style.BOLD));
    }
  }

  private void item(CostItem item, Map<String, String> formulas) {
    int row = rows.next();
    BigDecimal amount = BigDecimal.valueOf(item.amount());
    String formula = formulas.get(item.key());
    rows.add(
        Cell.text(item.what()),
        formula == null
            ? Cell.number(amount, Style.HUNDREDTH)
            : Cell.formula(formula, amount, Style.HUNDREDTH),
        Cell.text(item.unit()),
        Cell.formula(rates.cell(item.key()), BigDecimal.valueOf(item.price()), Style.HUNDREDTH),
        Cell.formula("ROUND(B" + row + "*D" + row + ",2)", item.cost(), Style.HUNDREDTH),
        Cell.text(formula == null ? "as planned; does not follow the rates" : ""));
  }

  private int line(String what, String formula, BigDecimal value) {
    Cell empty = Cell.text("", Style.SUM_TEXT);
    return rows.add(
        Cell.text(what, Style.SUM_TEXT),
        empty,
        empty,
        empty,
        Cell.formula(formula, value, Style.SUM_HUNDREDTH));
  }

  private void alternates() {
    List<AlternateAmounts> others = amounts.alternates();
    if (others.isEmpty()) {
      return;
    }
    rows.title("Alternates, as the program worked them out");
    rows.head(
        "alternate",
        "elements",
        "bags",
        "person hours",
        "total",
        "what it changes",
        "days",
        "bags more",
        "person hours more",
        "total more");
    others.forEach(this::alternate);
  }

  private void alternate(AlternateAmounts other) {
    Headline headline = other.headline();
    Headline more = other.difference();
    String lacks = other.lacks().isEmpty() ? "" : "; the total lacks: " + other.lacks();
    rows.add(
        Cell.text(other.name()),
        Cell.number(headline.elements(), Style.WHOLE),
        Cell.number(headline.bags(), Style.WHOLE),
        Cell.number(headline.personHours(), Style.TENTH),
        Cell.number(headline.total(), Style.HUNDREDTH),
        Cell.text(String.join("; ", other.changes()) + lacks, Style.WRAPPED),
        Cell.number(headline.workingDays(), Style.WHOLE),
        Cell.number(more.bags(), Style.WHOLE),
        Cell.number(more.personHours(), Style.TENTH),
        Cell.number(more.total(), Style.HUNDREDTH));
  }
}
