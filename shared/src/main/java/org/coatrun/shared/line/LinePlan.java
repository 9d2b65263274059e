package org.coatrun.shared.line;

import java.util.List;
import org.coatrun.shared.finding.Finding;

/**
 * Where the machine stands and how the material gets to every place of work.
 *
 * @param machines the spots used
 * @param risers the risers used
 * @param cells all places of work
 * @param routes for each cell its line, or why there is none
 * @param floors all floors, from the lowest up
 * @param comparison the best spots, each taken alone, the cheapest first
 * @param candidates all risers looked at
 * @param groundless work that no floor lies under
 * @param hardware for the whole job
 * @param moves in order
 */
public record LinePlan(
    List<MachineSpot> machines,
    List<RiserUse> risers,
    List<WorkCell> cells,
    List<RouteResult> routes,
    List<FloorPlan> floors,
    List<SpotComparison> comparison,
    List<Riser> candidates,
    List<WorkPiece> groundless,
    List<Hardware> hardware,
    List<Move> moves,
    Proof proof,
    List<Finding> findings) {

  public LinePlan {
    machines = List.copyOf(machines);
    risers = List.copyOf(risers);
    cells = List.copyOf(cells);
    routes = List.copyOf(routes);
    floors = List.copyOf(floors);
    comparison = List.copyOf(comparison);
    candidates = List.copyOf(candidates);
    groundless = List.copyOf(groundless);
    hardware = List.copyOf(hardware);
    moves = List.copyOf(moves);
    findings = List.copyOf(findings);
    if (routes.size() != cells.size()) {
      throw new IllegalArgumentException(
          cells.size() + " places of work with " + routes.size() + " routes");
    }
  }
}
