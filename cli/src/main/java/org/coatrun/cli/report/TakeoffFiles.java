package org.coatrun.cli.report;

import org.coatrun.cli.output.OutputFolder;
import org.coatrun.shared.estimate.Takeoff;

/** The files of a takeoff. */
public final class TakeoffFiles {

  private TakeoffFiles() {}

  /** Writes takeoff.json; {@code more} stands at its end. */
  public static void json(OutputFolder folder, Results results, JsonPart more) {
    folder.writeBytes("takeoff.json", out -> TakeoffJson.write(out, results, more));
  }

  /**
   * Writes members.csv, decks.csv, findings.csv and basis.txt; with a job also material.csv,
   * programme.csv and inspection.csv.
   */
  public static void lists(OutputFolder folder, Results results) {
    Takeoff takeoff = results.takeoff();
    Sources sources = new Sources(takeoff.building());
    folder.write(
        "members.csv",
        out -> CsvTable.write(out, MemberColumns.of(sources, results), takeoff.members()));
    folder.write(
        "decks.csv", out -> CsvTable.write(out, DeckColumns.of(sources, results), takeoff.decks()));
    folder.write(
        "findings.csv", out -> CsvTable.write(out, FindingColumns.ALL, takeoff.findings()));
    if (results.amounts().isPresent()) {
      AmountFiles.write(
          folder,
          results.amounts().get(),
          results.bid().orElseThrow().job().units(),
          results.cautions());
    }
    folder.write("basis.txt", out -> Basis.write(out, results));
  }
}
