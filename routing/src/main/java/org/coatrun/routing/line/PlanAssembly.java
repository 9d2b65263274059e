package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.coatrun.routing.floor.WorkPlan;
import org.coatrun.routing.siting.Cover;
import org.coatrun.routing.siting.CoverResult;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.Proof;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.RouteResult;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.line.SpotComparison;
import org.coatrun.shared.line.WorkCell;

/** Turns a cover into a plan: routes, set-ups, hardware, moves, the checks of each floor. */
final class PlanAssembly {

  private final LineRequest request;
  private final Sites sites;
  private final Candidates candidates;
  private final WorkPlan work;
  private final List<WorkCell> cells;
  private final LineModel model;
  private final List<Finding> before;

  /**
   * @param before findings that every plan of the request has
   */
  PlanAssembly(
      LineRequest request,
      Sites sites,
      Candidates candidates,
      WorkPlan work,
      LineModel model,
      List<Finding> before) {
    this.request = request;
    this.sites = sites;
    this.candidates = candidates;
    this.work = work;
    this.model = model;
    this.before = List.copyOf(before);
    cells = work.cells();
  }

  /** The plan by a cover, beside the spots compared. */
  LinePlan of(CoverResult result, List<SpotComparison> compared) {
    var findings = new ArrayList<>(before);
    var reading = new Assignments(model, candidates, cells);
    List<Assignment> assigned = reading.of(result.cover());
    List<Integer> used = result.cover().map(Cover::machines).orElse(List.of());
    var routes = new CellRoutes(request, sites, model, candidates).of(cells, assigned, used);
    List<Optional<Route>> found = routes.stream().map(PlanAssembly::found).toList();
    var setUps = new SetUps(request, model, candidates, cells, found);
    List<SetUp> order = setUps.inOrder(assigned);
    Findings.add(request, cells, routes, work, sites, result, candidates.spots(), findings);
    List<FloorPlan> floors = floors(order, assigned, found);
    Findings.addChecks(request, floors, findings);
    return new LinePlan(
        used.stream().map(candidates.spots()::get).toList(),
        reading.risers(assigned),
        cells,
        routes,
        floors,
        compared,
        candidates.risers(),
        work.groundless(),
        new JobHardware(model, setUps, assigned, found).of(order),
        Moves.of(request, candidates.spots(), order),
        proof(result),
        findings.stream().sorted().toList());
  }

  private static Optional<Route> found(RouteResult result) {
    return result instanceof Route route ? Optional.of(route) : Optional.empty();
  }

  private static Proof proof(CoverResult result) {
    double cost = result.cover().map(Cover::cost).orElse(0.0);
    return new Proof(cost, result.bound(), result.nodes(), result.optimal());
  }

  private List<FloorPlan> floors(
      List<SetUp> order, List<Assignment> assigned, List<Optional<Route>> routes) {
    var checker = new FloorChecks(request, model, candidates.spots(), cells, assigned, routes);
    return IntStream.range(0, request.floors().size())
        .mapToObj(f -> floor(f, order, checker))
        .toList();
  }

  private FloorPlan floor(int floor, List<SetUp> order, FloorChecks checker) {
    List<Integer> here =
        IntStream.range(0, cells.size())
            .filter(c -> cells.get(c).floor() == floor)
            .boxed()
            .toList();
    return new FloorPlan(
        request.floors().get(floor),
        sites.of(floor).free().regions(),
        here,
        order.stream().filter(s -> s.floor() == floor).toList(),
        checker.of(floor, here));
  }
}
