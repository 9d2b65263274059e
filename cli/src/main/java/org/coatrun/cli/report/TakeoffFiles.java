package org.coatrun.cli.report;

import org.coatrun.cli.output.OutputFolder;

/** The files of a takeoff. */
public final class TakeoffFiles {

  private TakeoffFiles() {}

  /** Writes takeoff.json; {@code more} stands at its end. */
  public static void json(
      OutputFolder folder, Results results, TakeoffTables tables, JsonPart more) {
    folder.writeBytes("takeoff.json", out -> TakeoffJson.write(out, results, tables, more));
  }

  /**
   * Writes members.csv, decks.csv, findings.csv and basis.txt; with a job also material.csv,
   * programme.csv and inspection.csv.
   */
  public static void lists(OutputFolder folder, Results results, TakeoffTables tables) {
    folder.write("members.csv", out -> CsvTable.write(out, tables.members()));
    folder.write("decks.csv", out -> CsvTable.write(out, tables.decks()));
    folder.write("findings.csv", out -> CsvTable.write(out, tables.findings()));
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
