package org.coatrun.cli.report;

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

  static List<Column<FieldRow>> sheet(UnitSystem units) {
    return IntStream.range(0, FieldSheet.HEADER.size())
        .mapToObj(
            i ->
                Column.<FieldRow>of(
                    FieldSheet.HEADER.get(i), row -> FieldSheet.cells(row, units).get(i)))
        .toList();
  }
}
