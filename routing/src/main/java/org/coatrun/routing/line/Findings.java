package org.coatrun.routing.line;

import java.util.List;
import java.util.Locale;
import org.coatrun.routing.floor.WorkPlan;
import org.coatrun.routing.siting.CoverResult;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.LineFinding;
import org.coatrun.shared.line.Access;
import org.coatrun.shared.line.FloorCheck;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.NoRoute;
import org.coatrun.shared.line.RouteResult;
import org.coatrun.shared.line.WorkCell;
import org.coatrun.shared.line.WorkPiece;

/** Says what a plan could not do. */
final class Findings {

  private Findings() {}

  static void add(
      LineRequest request,
      List<WorkCell> cells,
      List<RouteResult> routes,
      WorkPlan work,
      Sites sites,
      CoverResult result,
      List<MachineSpot> spots,
      List<Finding> to) {
    for (int f = 0; f < request.floors().size(); f++) {
      if (sites.of(f).free().regions().isEmpty()) {
        to.add(say(LineFinding.NO_FREE_FLOOR, "%s", request.floors().get(f).storey()));
      }
    }
    for (WorkPiece p : work.groundless()) {
      String name = p.mark().isEmpty() ? p.guid() : p.mark();
      String sentence =
          name + ": " + request.wording().coating(p.coating()) + " without a floor under it.";
      to.add(new Finding(LineFinding.NO_FLOOR_UNDER, "", 0, 0, p.guid(), sentence));
    }
    for (int c = 0; c < cells.size(); c++) {
      addCell(request, cells.get(c), routes.get(c), to);
    }
    if (spots.isEmpty()) {
      to.add(say(LineFinding.NO_MACHINE_SPOT, "No machine spot was given or found."));
    } else if (!result.optimal()) {
      to.add(say(LineFinding.NOT_PROVEN_BEST, "Stopped after %d parts.", result.nodes()));
    }
  }

  static void addChecks(LineRequest request, List<FloorPlan> floors, List<Finding> to) {
    for (FloorPlan floor : floors) {
      floor.check().ifPresent(c -> addCheck(request, floor.outline().storey(), c, to));
    }
  }

  private static void addCell(
      LineRequest request, WorkCell cell, RouteResult route, List<Finding> to) {
    String where =
        request.floors().get(cell.floor()).storey() + " at " + request.wording().place(cell.at());
    if (route instanceof NoRoute none) {
      to.add(say(LineFinding.OUT_OF_LINE, "%s: %s.", where, none.sentence()));
    }
    if (cell.access() == Access.SCAFFOLD) {
      to.add(
          say(
              LineFinding.NEEDS_SCAFFOLD,
              "%s: steel up to %s over the floor.",
              where,
              request.wording().about(cell.highest())));
    }
  }

  private static void addCheck(
      LineRequest request, String storey, FloorCheck check, List<Finding> to) {
    for (String note : check.notes()) {
      if (note.startsWith("equivalent")) {
        to.add(say(LineFinding.OVER_RATING, "%s: %s.", storey, note));
      }
    }
    if (check.booster().orElse(false)) {
      to.add(
          say(
              LineFinding.BOOSTER_NEEDED,
              "%s: %s needed at the pump.",
              storey,
              request.wording().pressure(check.waterAtPump())));
    }
    check
        .feederDrop()
        .ifPresent(
            d -> {
              if (d > request.utilities().feederPercent()) {
                to.add(say(LineFinding.FEEDER_DROP, "%s: %.1f %%.", storey, d));
              }
            });
  }

  private static Finding say(LineFinding code, String sentence, Object... with) {
    return Finding.of(code, String.format(Locale.ROOT, sentence, with));
  }
}
