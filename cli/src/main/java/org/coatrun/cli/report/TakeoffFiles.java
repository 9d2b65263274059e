package org.coatrun.cli.report;

import org.coatrun.cli.output.OutputFolder;
import org.coatrun.shared.estimate.Takeoff;

/** The files of a takeoff. */
public final class TakeoffFiles {

  private TakeoffFiles() {}

  /**
   * Writes members.csv, decks.csv, findings.csv, takeoff.json and basis.txt; with a job also
   * material.csv, programme.csv and inspection.csv.
   */
  public static void write(OutputFolder folder, Results results) {
    write(folder, results, json -> {});
  }

  /** The same; {@code more} stands at the end of takeoff.json. */
  public static void write(OutputFolder folder, Results results, JsonPart more) {
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
      AmountFiles.write(folder, results.amounts().get(), results.bid().orElseThrow().job().units());
    }
    folder.writeBytes("takeoff.json", out -> TakeoffJson.write(out, results, more));
    folder.write("basis.txt", out -> Basis.write(out, results));
  }
}
