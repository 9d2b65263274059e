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
import org.coatrun.shared.bid.labour.LabourLine;
import org.coatrun.shared.bid.labour.LabourSum;
import org.coatrun.shared.bid.material.CoatKind;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.rules.Bags;

/** The sheet of labour: spraying by floor, kind and height band, then the hours of each floor. */
final class LabourRows {

  private static final int HOURS = 7;
  private static final int LIFTED = 8;

  /** Lines that have floor, kind and height band in common. */
  private record Group(CoatKind kind, int band) implements Comparable<Group> {
    @Override
    public int compareTo(Group other) {
      int byKind = kind.compareTo(other.kind);
      return byKind == 0 ? Integer.compare(band, other.band) : byKind;
    }
  }

  private final SheetRows rows;
  private final Map<String, int[]> ranges = new LinkedHashMap<>();
  private final Map<String, Integer> floorRows = new LinkedHashMap<>();
  private final BidAmounts amounts;
  private final Job job;
  private final Rates rates;
  private int totalRow;

  LabourRows(
      BidAmounts amounts, Job job, Rates rates, MaterialRows material, Optional<String> mark) {
    rows = new SheetRows("Labour", mark);
    this.amounts = amounts;
    this.job = job;
    this.rates = rates;
    spraying();
    floors(material);
  }

  /** Crew hours of all floors. */
  String crewHours() {
    return rows.reference(totalRow, 8);
  }

  /** Crew hours of a floor. */
  String crewHours(String floor) {
    return rows.reference(floorRows.get(floor), 8);
  }

  /** Days of lift or scaffold. */
  String liftDays() {
    return rows.reference(totalRow, 10);
  }

  Sheet sheet() {
    return rows.sheet(28, 28, 40, 14, 14, 14, 14, 14, 14, 14);
  }

  private void spraying() {
    rows.add(Cell.text("Spraying by working floor, kind and height", Style.TITLE));
    rows.head(
        "working floor",
        "kind",
        "reached",
        "in place_bf",
        "bf an hour",
        "factor",
        "crew hours",
        "of these by lift or scaffold");
    Map<String, List<LabourLine>> byFloor =
        amounts.labour().lines().stream().collect(Collectors.groupingBy(LabourLine::floor));
    for (String floor : amounts.labour().byFloor().keySet()) {
      List<LabourLine> lines = byFloor.getOrDefault(floor, List.of());
      int from = rows.next();
      groups(lines).forEach((group, some) -> row(floor, group, some));
      ranges.put(floor, new int[] {from, rows.next() - 1});
    }
  }

  private static Map<Group, List<LabourLine>> groups(List<LabourLine> lines) {
    return lines.stream()
        .collect(
            Collectors.groupingBy(
                l -> new Group(l.material().kind(), l.reach().band()),
                TreeMap::new,
                Collectors.toList()));
  }

  private void row(String floor, Group group, List<LabourLine> lines) {
    int row = rows.next();
    double boardFeet = lines.stream().mapToDouble(l -> l.material().byArea().boardFeet()).sum();
    double hours = lines.stream().mapToDouble(LabourLine::crewHours).sum();
    boolean lifted = lines.get(0).reach().lifted();
    rows.add(
        Cell.text(floor.isEmpty() ? "(none)" : floor),
        Cell.text(group.kind().word()),
        Cell.text(Rates.band(job.labour().bands().get(group.band()))),
        Cell.number(boardFeet, Style.HUNDREDTH),
        Cell.formula(
            rates.cell(Rates.rate(group.kind())),
            BigDecimal.valueOf(lines.get(0).rate()),
            Style.HUNDREDTH),
        Cell.formula(
            rates.cell(Rates.factor(group.band())),
            BigDecimal.valueOf(lines.get(0).reach().factor()),
            Style.HUNDREDTH),
        hours("D" + row + "/E" + row + "*F" + row, hours),
        lifted ? hours("G" + row, hours) : Cell.number(0, Style.HUNDREDTH));
  }

  private void floors(MaterialRows material) {
    rows.title("Crew hours by working floor");
    rows.head(
        "working floor",
        "bags",
        "hours of a machine for them",
        "spraying",
        "waiting for the machine",
        "set-up",
        "patching",
        "crew hours",
        "by lift or scaffold",
        "lift days");
    int first = rows.next();
    amounts
        .labour()
        .byFloor()
        .forEach(
            (floor, sum) -> {
              if (sum.crewHours() > 0) {
                floorRows.put(floor, floor(floor, sum, material));
              }
            });
    total(first, rows.next() - 1);
  }

  private int floor(String floor, LabourSum sum, MaterialRows material) {
    int row = rows.next();
    int[] range = ranges.get(floor);
    double bags =
        amounts.programme().floors().stream()
            .filter(f -> f.floor().equals(floor))
            .mapToDouble(f -> f.exactBags())
            .sum();
    long liftDays = Bags.whole(sum.byLift() / job.labour().shift());
    return rows.add(
        Cell.text(floor.isEmpty() ? "(none)" : floor),
        hours(material.bags(floor), bags),
        hours("B" + row + "/" + rates.cell("machine.rate"), bags / job.machine().rate()),
        hours(SheetRows.sum(HOURS, range[0], range[1]), sum.spraying()),
        hours("MAX(0,C" + row + "-D" + row + ")", sum.waiting()),
        hours(rates.cell("labour.per-floor"), sum.setUp()),
        hours("D" + row + "*" + rates.cell("labour.patching"), sum.patching()),
        hours("SUM(D" + row + ":G" + row + ")", sum.crewHours()),
        hours(SheetRows.sum(LIFTED, range[0], range[1]), sum.byLift()),
        Cell.formula(
            MaterialRows.whole("I" + row + "/" + rates.cell("labour.shift")),
            BigDecimal.valueOf(liftDays),
            Style.WHOLE));
  }

  private void total(int first, int last) {
    LabourSum all = amounts.labour().total();
    double bags = amounts.programme().floors().stream().mapToDouble(f -> f.exactBags()).sum();
    double[] values = {
      bags,
      bags / job.machine().rate(),
      all.spraying(),
      all.waiting(),
      all.setUp(),
      all.patching(),
      all.crewHours(),
      all.byLift()
    };
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.text("All", Style.SUM_TEXT));
    for (int i = 0; i < values.length; i++) {
      cells.add(
          Cell.formula(
              SheetRows.sum(i + 2, first, last),
              BigDecimal.valueOf(values[i]),
              Style.SUM_HUNDREDTH));
    }
    cells.add(
        Cell.formula(
            SheetRows.sum(values.length + 2, first, last),
            BigDecimal.valueOf(amounts.labour().liftDays()),
            Style.SUM_WHOLE));
    totalRow = rows.add(cells);
  }

  private static Cell hours(String formula, double value) {
    return Cell.formula(formula, BigDecimal.valueOf(value), Style.HUNDREDTH);
  }
}
