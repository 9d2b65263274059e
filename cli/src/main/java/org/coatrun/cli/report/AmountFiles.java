package org.coatrun.cli.report;

import java.util.List;
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
   * @param cautions of the run; rows are marked where a listing is invented
   */
  static void write(
      OutputFolder folder, BidAmounts amounts, UnitSystem units, List<String> cautions) {
    folder.write(
        "material.csv",
        out ->
            CsvTable.write(
                out,
                Cautions.marked(MaterialColumns.ALL, cautions),
                MaterialColumns.rows(amounts)));
    folder.write(
        "programme.csv",
        out ->
            CsvTable.write(
                out,
                Cautions.marked(ProgrammeColumns.daysWithChecks(amounts.programme()), cautions),
                ProgrammeColumns.days(amounts.programme())));
    folder.write(
        "inspection.csv",
        out ->
            CsvTable.write(
                out, InspectionColumns.sheet(units, cautions), amounts.inspection().rows()));
  }
}
