package org.coatrun.cli.workbook;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.coatrun.cli.spreadsheet.Cell;
import org.coatrun.cli.spreadsheet.Sheet;
import org.coatrun.cli.spreadsheet.Style;
import org.coatrun.shared.bid.amounts.BidAmounts;
import org.coatrun.shared.bid.programme.Delivery;
import org.coatrun.shared.bid.programme.FloorCheck;
import org.coatrun.shared.bid.programme.FloorTime;
import org.coatrun.shared.bid.programme.ProgrammePlan;
import org.coatrun.shared.bid.programme.WorkDay;
import org.coatrun.shared.job.Job;

/** The sheet of days: floors by the rates; days, deliveries and checks as planned. */
final class ProgrammeRows {

  private final SheetRows rows;
  private final ProgrammePlan plan;
  private final Rates rates;
  private final int machines;
  private int daysRow;

  ProgrammeRows(
      BidAmounts amounts, Job job, Rates rates, LabourRows labour, Optional<String> mark) {
    rows = new SheetRows("Programme", mark);
    this.plan = amounts.programme();
    this.rates = rates;
    this.machines = job.machine().machines();
    floors(labour);
    days();
    deliveries();
    checks();
  }

  /** Working days in all. */
  String workingDays() {
    return rows.reference(daysRow, 2);
  }

  Sheet sheet() {
    return rows.sheet(28, 14, 14, 14, 14, 14, 14, 14, 14);
  }

  private void floors(LabourRows labour) {
    rows.add(Cell.text("Floors, in the order they are sprayed", Style.TITLE));
    rows.head(
        "working floor",
        "hours of work",
        "begins at hour",
        "ends at hour",
        "first day",
        "last day",
        "days",
        "first date, as planned",
        "last date, as planned");
    int first = rows.next();
    plan.floors().forEach(floor -> floor(floor, labour, first));
    int last = rows.next() - 1;
    String days = last < first ? "0" : "F" + last;
    daysRow =
        rows.add(
            Cell.text("Working days in all", Style.SUM_TEXT),
            Cell.formula(days, BigDecimal.valueOf(plan.workingDays()), Style.SUM_WHOLE));
  }

  private void floor(FloorTime floor, LabourRows labour, int first) {
    int row = rows.next();
    String shift = rates.cell("labour.shift");
    rows.add(
        Cell.text(floor.floor().isEmpty() ? "(none)" : floor.floor()),
        number(
            labour.crewHours(floor.floor()) + "/" + rates.cell("machine.machines"),
            floor.crewHours().crewHours() / machines),
        number(row == first ? "0" : "D" + (row - 1), floor.begin()),
        number("C" + row + "+B" + row, floor.end()),
        whole("INT(C" + row + "/" + shift + "+0.0000001)+1", floor.firstDay()),
        whole(
            "MAX(E" + row + ",ROUNDUP(MAX(0,D" + row + "/" + shift + "-0.0000001),0))",
            floor.lastDay()),
        whole("F" + row + "-E" + row + "+1", floor.days()),
        date(floor.firstDate()),
        date(floor.lastDate()));
  }

  private void days() {
    rows.title("Days, as planned");
    rows.head("floors", "day", "date", "hours", "bags", "delivered", "trucks", "stock");
    for (WorkDay day : plan.days()) {
      rows.add(
          Cell.text(String.join(", ", day.floors())),
          Cell.number(day.day(), Style.WHOLE),
          date(day.date()),
          Cell.number(day.hours(), Style.HUNDREDTH),
          Cell.number(day.bags(), Style.WHOLE),
          Cell.number(day.delivered(), Style.WHOLE),
          Cell.number(day.trucks(), Style.WHOLE),
          Cell.number(day.stock(), Style.WHOLE));
    }
  }

  private void deliveries() {
    rows.title("Deliveries, as planned");
    rows.head("", "day", "date", "trucks", "pallets", "bags", "last used on day", "days kept");
    for (Delivery delivery : plan.deliveries()) {
      rows.add(
          Cell.blank(),
          Cell.number(delivery.day(), Style.WHOLE),
          date(delivery.date()),
          Cell.number(delivery.trucks(), Style.WHOLE),
          Cell.number(delivery.pallets(), Style.WHOLE),
          Cell.number(delivery.bags(), Style.WHOLE),
          Cell.number(delivery.lastUse(), Style.WHOLE),
          Cell.number(delivery.keptDays(), Style.WHOLE));
    }
  }

  private void checks() {
    rows.title("Checks before a floor is sprayed");
    rows.head("working floor", "before day", "number", "check");
    for (FloorCheck check : plan.checks()) {
      rows.add(
          Cell.text(check.floor()),
          Cell.number(check.firstDay(), Style.WHOLE),
          Cell.number(check.number(), Style.WHOLE),
          Cell.text(check.check()));
    }
  }

  private static Cell number(String formula, double value) {
    return Cell.formula(formula, BigDecimal.valueOf(value), Style.HUNDREDTH);
  }

  private static Cell whole(String formula, long value) {
    return Cell.formula(formula, BigDecimal.valueOf(value), Style.WHOLE);
  }

  private static Cell date(Optional<LocalDate> date) {
    return date.map(d -> Cell.text(d.toString())).orElse(Cell.blank());
  }
}
