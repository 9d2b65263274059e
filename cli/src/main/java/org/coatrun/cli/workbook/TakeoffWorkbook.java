package org.coatrun.cli.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.cli.report.Cautions;
import org.coatrun.cli.report.Results;
import org.coatrun.cli.report.Table;
import org.coatrun.cli.report.TakeoffTables;
import org.coatrun.cli.spreadsheet.Sheet;
import org.coatrun.cli.spreadsheet.WorkbookFile;
import org.coatrun.shared.bid.amounts.BidAmounts;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.estimate.Totals;

/** The workbook takeoff.xlsx. */
public final class TakeoffWorkbook {

  private TakeoffWorkbook() {}

  /**
   * Writes takeoff.xlsx: what was measured and, where there is a job, what it takes to spray it.
   */
  public static void write(OutputFolder folder, Results results, TakeoffTables tables) {
    Optional<BidSheets> bid =
        results
            .bid()
            .flatMap(
                b ->
                    results
                        .amounts()
                        .map(a -> new BidSheets(b.job(), a, Cautions.mark(results.cautions()))));
    List<Sheet> sheets = sheets(results, tables, bid);
    folder.writeBytes("takeoff.xlsx", out -> WorkbookFile.write(out, sheets));
  }

  private static List<Sheet> sheets(
      Results results, TakeoffTables tables, Optional<BidSheets> bid) {
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(SummarySheet.of(results, bid));
    sheets.add(byFloor(results));
    sheets.add(bySection(results));
    sheets.add(TableSheet.of("Members", tables.members(), "members.csv"));
    sheets.add(TableSheet.of("Decks", tables.decks(), "decks.csv"));
    bid.ifPresent(b -> sheets.addAll(b.sheets()));
    sheets.add(TableSheet.of("Findings", tables.findings(), "findings.csv"));
    sheets.add(BasisSheet.of(results.basis(), bid.map(BidSheets::basis).orElse(List.of())));
    sheets.add(TextSheet.of("Cautions", "Cautions", results.cautions()));
    return sheets;
  }

  private static Sheet byFloor(Results results) {
    Takeoff takeoff = results.takeoff();
    SumSheet sheet = new SumSheet(Cautions.mark(results.cautions()));
    add(sheet, "Members by storey", "storey", takeoff.membersByStorey(), takeoff.memberTotals());
    add(sheet, "Decks by storey", "storey", takeoff.decksByStorey(), takeoff.deckTotals());
    results.amounts().ifPresent(a -> material(sheet, a, "floor"));
    return sheet.sheet("By floor");
  }

  private static Sheet bySection(Results results) {
    Takeoff takeoff = results.takeoff();
    SumSheet sheet = new SumSheet(Cautions.mark(results.cautions()));
    add(sheet, "Members by section", "section", takeoff.membersBySection(), takeoff.memberTotals());
    add(sheet, "Members by role", "role", takeoff.membersByRole(), takeoff.memberTotals());
    results
        .amounts()
        .ifPresent(
            a -> List.of("section", "role", "rule", "kind").forEach(by -> material(sheet, a, by)));
    return sheet.sheet("By section");
  }

  private static void add(
      SumSheet sheet, String title, String group, Map<String, Totals> sums, Totals total) {
    Table all = TakeoffTables.sums(group, Map.of("All", total));
    sheet.add(title, TakeoffTables.sums(group, sums), all.rows().get(0));
  }

  private static void material(SumSheet sheet, BidAmounts amounts, String by) {
    sheet.add(
        "Material by " + by,
        TakeoffTables.material(amounts, by),
        TakeoffTables.material(amounts, "job").rows().get(0));
  }
}
