package org.coatrun.cli.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.cli.report.Basis;
import org.coatrun.cli.report.Cautions;
import org.coatrun.cli.report.Table;
import org.coatrun.cli.report.TakeoffTables;
import org.coatrun.cli.spreadsheet.Sheet;
import org.coatrun.cli.spreadsheet.WorkbookFile;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.Totals;

/** The workbook takeoff.xlsx. */
public final class TakeoffWorkbook {

  private TakeoffWorkbook() {}

  /**
   * Writes takeoff.xlsx.
   *
   * @throws CommandFailure where it cannot be written
   */
  public static void write(OutputFolder folder, Takeoff takeoff) throws CommandFailure {
    List<Sheet> sheets = sheets(takeoff);
    folder.writeBytes("takeoff.xlsx", out -> WorkbookFile.write(out, sheets));
  }

  private static List<Sheet> sheets(Takeoff takeoff) {
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(SummarySheet.of(takeoff));
    sheets.add(byFloor(takeoff));
    sheets.add(bySection(takeoff));
    sheets.add(TableSheet.of("Members", TakeoffTables.members(takeoff), "members.csv"));
    sheets.add(TableSheet.of("Decks", TakeoffTables.decks(takeoff), "decks.csv"));
    sheets.add(TableSheet.of("Findings", TakeoffTables.findings(takeoff), "findings.csv"));
    sheets.add(TextSheet.of("Basis", "What the numbers mean", Basis.LINES));
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
