package org.coatrun.cli.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.cli.report.Basis;
import org.coatrun.cli.report.Cautions;
import org.coatrun.cli.report.Table;
import org.coatrun.cli.report.TakeoffTables;
import org.coatrun.cli.spreadsheet.Sheet;
import org.coatrun.cli.spreadsheet.WorkbookFile;
import org.coatrun.shared.bid.amounts.BidAmounts;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.Totals;
import org.coatrun.shared.job.Job;

/** The workbook takeoff.xlsx. */
public final class TakeoffWorkbook {

  private TakeoffWorkbook() {}

  /**
   * Writes takeoff.xlsx with what was measured.
   *
   * @throws CommandFailure where it cannot be written
   */
  public static void write(OutputFolder folder, Takeoff takeoff) throws CommandFailure {
    write(folder, sheets(takeoff, Optional.empty()));
  }

  /**
   * Writes takeoff.xlsx with what was measured and what it takes to spray it.
   *
   * @param amounts of the job
   * @throws CommandFailure where it cannot be written
   */
  public static void write(OutputFolder folder, Takeoff takeoff, Job job, BidAmounts amounts)
      throws CommandFailure {
    write(folder, sheets(takeoff, Optional.of(new BidSheets(job, amounts))));
  }

  private static void write(OutputFolder folder, List<Sheet> sheets) throws CommandFailure {
    folder.writeBytes("takeoff.xlsx", out -> WorkbookFile.write(out, sheets));
  }

  /** The sheets of a takeoff, and those of its bid where there is one. */
  static List<Sheet> sheets(Takeoff takeoff, Optional<BidSheets> bid) {
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(SummarySheet.of(takeoff, bid));
    sheets.add(byFloor(takeoff));
    sheets.add(bySection(takeoff));
    sheets.add(TableSheet.of("Members", TakeoffTables.members(takeoff), "members.csv"));
    sheets.add(TableSheet.of("Decks", TakeoffTables.decks(takeoff), "decks.csv"));
    bid.ifPresent(b -> sheets.addAll(b.sheets()));
    sheets.add(TableSheet.of("Findings", TakeoffTables.findings(takeoff), "findings.csv"));
    sheets.add(BasisSheet.of(Basis.LINES, bid.map(BidSheets::basis).orElse(List.of())));
    sheets.add(TextSheet.of("Cautions", "Cautions", Cautions.ALL));
    return sheets;
  }

  private static Sheet byFloor(Takeoff takeoff) {
    SumSheet sheet = new SumSheet();
    add(sheet, "Members by storey", "storey", takeoff.membersByStorey(), takeoff.memberTotals());
    add(sheet, "Decks by storey", "storey", takeoff.decksByStorey(), takeoff.deckTotals());
    return sheet.sheet("By floor");
  }

  private static Sheet bySection(Takeoff takeoff) {
    SumSheet sheet = new SumSheet();
    add(sheet, "Members by section", "section", takeoff.membersBySection(), takeoff.memberTotals());
    add(sheet, "Members by role", "role", takeoff.membersByRole(), takeoff.memberTotals());
    return sheet.sheet("By section");
  }

  private static void add(
      SumSheet sheet, String title, String group, Map<String, Totals> sums, Totals total) {
    Table all = TakeoffTables.sums(group, Map.of("All", total));
    sheet.add(
        title, TakeoffTables.sums(group, sums), all.rows().stream().findFirst().orElseThrow());
  }
}
