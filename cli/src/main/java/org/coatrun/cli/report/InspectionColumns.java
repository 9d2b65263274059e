package org.coatrun.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.coatrun.shared.bid.inspection.FieldRow;
import org.coatrun.shared.bid.inspection.FieldSheet;
import org.coatrun.shared.bid.inspection.FloorInspection;
import org.coatrun.shared.job.UnitSystem;

/** The rows of inspection.csv, which is the field sheet, and the counts of each floor. */
final class InspectionColumns {

  static final List<Column<FloorInspection>> FLOORS =
      List.of(
          Column.of("floor", FloorInspection::floor),
          Column.of("members", FloorInspection::members),
          Column.of("drawn", FloorInspection::drawnMembers),
          Column.of("deck_m2", floor -> Rounded.fine(floor.sprayedDeck().squareMetres())),
          Column.of("deck_spots", FloorInspection::deckSpots),
          Column.of("readings", FloorInspection::readings),
          Column.of("density_samples", FloorInspection::samples),
          Column.of("bond_samples", FloorInspection::samples));

  private InspectionColumns() {}

  /** The field sheet; what is written in by hand stays its last column. */
  static List<Column<FieldRow>> sheet(UnitSystem units, List<String> cautions) {
    List<Column<FieldRow>> columns =
        IntStream.range(0, FieldSheet.HEADER.size())
            .mapToObj(
                i ->
                    Column.<FieldRow>of(
                        FieldSheet.HEADER.get(i), row -> FieldSheet.cells(row, units).get(i)))
            .toList();
    int last = columns.size() - 1;
    List<Column<FieldRow>> sheet =
        new ArrayList<>(Cautions.marked(columns.subList(0, last), cautions));
    sheet.add(columns.get(last));
    return sheet;
  }
}
