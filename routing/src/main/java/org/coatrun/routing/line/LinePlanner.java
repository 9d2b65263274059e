package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.coatrun.routing.floor.WorkGatherer;
import org.coatrun.routing.floor.WorkPlan;
import org.coatrun.routing.siting.Cover;
import org.coatrun.routing.siting.CoverResult;
import org.coatrun.routing.siting.CoverSearch;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.Proof;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.RouteResult;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.line.WorkCell;
import org.coatrun.shared.units.Length;

/**
 * Plans the line: floors and work in, machine, risers, outlets, hose and checks out.
 *
 * <p>Deterministic; one planner serves one request.
 */
public final class LinePlanner {

  /** A place of work is this wide; the whip at its middle reaches its corners. */
  private static final Length CELL = Length.ofFeet(20);

  /** Steel this far from free floor is still sprayed from it. */
  private static final Length ASIDE = Length.ofFeet(6);

  private static final int COMPARED = 5;

  private final LineRequest request;
  private final List<Finding> findings = new ArrayList<>();
  private final Sites sites;
  private final Candidates candidates;
  private final WorkPlan work;
  private final List<WorkCell> cells;
  private final LineModel model;

  private LinePlanner(LineRequest request) {
    this.request = request;
    sites = new Sites(request);
    candidates = Candidates.of(request, sites, findings);
    work = gather();
    cells = work.cells();
    model = new LineModel(request, sites, candidates.spots(), candidates.risers(), cells);
  }

  /** The plan for a request; what cannot be reached is in it with the reason. */
  public static LinePlan plan(LineRequest request) {
    return new LinePlanner(request).plan();
  }

  private LinePlan plan() {
    CoverResult result =
        CoverSearch.solve(model.problem(), request.mostMachines(), request.searchNodes());
    var reading = new Assignments(model, candidates, cells);
    List<Assignment> assigned = reading.of(result.cover());
    List<Integer> used = result.cover().map(Cover::machines).orElse(List.of());
    var routes = new CellRoutes(request, sites, model, candidates).of(cells, assigned, used);
    List<Optional<Route>> found = routes.stream().map(LinePlanner::found).toList();
    var setUps = new SetUps(request, model, candidates, cells, found);
    List<SetUp> order = setUps.inOrder(assigned);
    Findings.add(request, cells, routes, work, sites, result, candidates.spots(), findings);
    List<FloorPlan> floors = floors(order, assigned, found);
    Findings.addChecks(floors, request.utilities().feederPercent(), findings);
    return new LinePlan(
        used.stream().map(candidates.spots()::get).toList(),
        reading.risers(assigned),
        cells,
        routes,
        floors,
        new Comparison(request, model, candidates.spots(), candidates.risers())
            .best(COMPARED, result),
        candidates.risers(),
        work.groundless(),
        new JobHardware(model, setUps, assigned, found).of(order),
        Moves.of(request.floors(), order),
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

  private WorkPlan gather() {
    var free =
        IntStream.range(0, request.floors().size()).mapToObj(f -> sites.of(f).free()).toList();
    return new WorkGatherer(request.floors(), free, request.reach(), CELL, ASIDE)
        .gather(request.work());
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
