package org.coatrun.cli.report;

import org.coatrun.cli.output.OutputFolder;
import org.coatrun.shared.bid.amounts.BidAmounts;
import org.coatrun.shared.job.UnitSystem;

/** The files of the amounts of a bid. */
final class AmountFiles {

  private AmountFiles() {}

  /**
   * Writes material.csv, programme.csv and inspection.csv, the field sheet.
   *
   * @param units that thicknesses of the field sheet are written in
   */
  static void write(OutputFolder folder, BidAmounts amounts, UnitSystem units) {
    folder.write(
        "material.csv",
        out -> CsvTable.write(out, MaterialColumns.ALL, MaterialColumns.rows(amounts)));
    folder.write(
        "programme.csv",
        out ->
            CsvTable.write(out, ProgrammeColumns.DAYS, ProgrammeColumns.days(amounts.programme())));
    folder.write(
        "inspection.csv",
        out -> CsvTable.write(out, InspectionColumns.sheet(units), amounts.inspection().rows()));
  }
}
