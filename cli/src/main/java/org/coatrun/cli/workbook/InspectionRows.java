package org.coatrun.cli.workbook;

import java.util.Optional;
import org.coatrun.cli.spreadsheet.Cell;
import org.coatrun.cli.spreadsheet.Sheet;
import org.coatrun.cli.spreadsheet.Style;
import org.coatrun.shared.bid.inspection.Drawn;
import org.coatrun.shared.bid.inspection.FloorInspection;
import org.coatrun.shared.bid.inspection.InspectionPlan;
import org.coatrun.shared.bid.inspection.KindCount;
import org.coatrun.shared.rules.ThicknessJudge;

/** The sheet of inspection: what is read and sampled on each floor, and on which members. */
final class InspectionRows {

  private final SheetRows rows;

  private InspectionRows(Optional<String> mark) {
    rows = new SheetRows("Inspection", mark);
  }

  static Sheet of(InspectionPlan plan, Optional<String> mark) {
    InspectionRows sheet = new InspectionRows(mark);
    sheet.floors(plan);
    sheet.kinds(plan);
    sheet.drawn(plan);
    return sheet.rows.sheet(28, 26, 16, 16, 18, 16, 16, 16, 16);
  }

  private void floors(InspectionPlan plan) {
    rows.add(Cell.text("What the special inspector measures", Style.TITLE));
    Optional<String> bond =
        plan.leastBond().map(b -> "Bond of at least %.0f psf.".formatted(b.psf()));
    rows.add(Cell.text(bond.orElse("The least bond is not known: no height is.")));
    rows.head(
        "working floor",
        "members",
        "of these drawn",
        "thickness readings",
        "deck to spray_ft2",
        "deck spots",
        "density samples",
        "bond samples");
    for (FloorInspection floor : plan.floors()) {
      rows.add(
          Cell.text(floor.floor()),
          Cell.number(floor.members(), Style.WHOLE),
          Cell.number(floor.drawnMembers(), Style.WHOLE),
          Cell.number(floor.readings(), Style.WHOLE),
          Cell.number(floor.sprayedDeck().squareFeet(), Style.TENTH),
          Cell.number(floor.deckSpots(), Style.WHOLE),
          Cell.number(floor.samples(), Style.WHOLE),
          Cell.number(floor.samples(), Style.WHOLE));
    }
    rows.add(
        Cell.text("All", Style.SUM_TEXT),
        sum(plan.floors().stream().mapToLong(FloorInspection::members).sum()),
        sum(plan.floors().stream().mapToLong(FloorInspection::drawnMembers).sum()),
        sum(plan.readings()),
        Cell.text("", Style.SUM_TEXT),
        sum(plan.floors().stream().mapToLong(FloorInspection::deckSpots).sum()),
        sum(plan.samples()),
        sum(plan.samples()));
  }

  private static Cell sum(long value) {
    return Cell.number(value, Style.SUM_WHOLE);
  }

  private void kinds(InspectionPlan plan) {
    rows.title("By kind of member");
    rows.head("working floor", "kind", "members", "of these drawn", "readings", "samples");
    for (FloorInspection floor : plan.floors()) {
      for (KindCount kind : floor.kinds()) {
        rows.add(
            Cell.text(floor.floor()),
            Cell.text(kind.kind()),
            Cell.number(kind.members(), Style.WHOLE),
            Cell.number(kind.drawn(), Style.WHOLE),
            Cell.number(kind.readings(), Style.WHOLE),
            Cell.number(kind.samples(), Style.WHOLE));
      }
    }
  }

  private void drawn(InspectionPlan plan) {
    rows.title("Members and deck spots drawn for readings");
    rows.head(
        "working floor",
        "name",
        "set",
        "section",
        "read as",
        "readings",
        "design_in",
        "least_in",
        "guid");
    for (FloorInspection floor : plan.floors()) {
      floor.drawn().forEach(one -> drawn(floor.floor(), one));
    }
  }

  private void drawn(String floor, Drawn one) {
    rows.add(
        Cell.text(floor),
        Cell.text(one.item().name()),
        Cell.number(one.set(), Style.WHOLE),
        Cell.text(one.item().section()),
        Cell.text(one.places().word()),
        Cell.number(one.places().readings(), Style.WHOLE),
        Cell.number(one.design().inches(), Style.THOUSANDTH),
        Cell.number(ThicknessJudge.lowestAllowed(one.design()).inches(), Style.THOUSANDTH),
        Cell.text(one.item().guid()));
  }
}
