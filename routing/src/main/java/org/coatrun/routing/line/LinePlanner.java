package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.coatrun.routing.floor.WorkGatherer;
import org.coatrun.routing.floor.WorkPlan;
import org.coatrun.routing.siting.CoverResult;
import org.coatrun.routing.siting.CoverSearch;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.SpotComparison;
import org.coatrun.shared.units.Length;

/**
 * Plans the line: floors and work in, machine, risers, outlets, hose and checks out.
 *
 * <p>Deterministic; one planner serves one request, and one thread.
 */
public final class LinePlanner {

  /** No place of work is wider than this; the whip at its middle reaches its corners. */
  private static final Length CELL = Length.ofFeet(20);

  /** Steel this far from free floor is still sprayed from it. */
  private static final Length ASIDE = Length.ofFeet(6);

  private static final int COMPARED = 5;

  private final LineRequest request;
  private final PlanAssembly assembly;
  private final CoverResult best;
  private final List<Comparison.Compared> compared;

  private LinePlanner(LineRequest asked) {
    request = GroundBeside.assumed(asked);
    var sites = new Sites(request);
    var findings = new ArrayList<Finding>();
    GroundBeside.finding(request).ifPresent(findings::add);
    Candidates candidates = Candidates.of(request, sites, findings);
    WorkPlan work = gather(request, sites);
    var model = LineModel.of(request, sites, candidates, work.cells());
    findings.addAll(candidates.withoutWay(request, model));
    best = CoverSearch.solve(model.problem(), request.mostMachines(), request.searchNodes());
    compared =
        new Comparison(request, model, candidates.spots(), candidates.risers())
            .best(COMPARED, best);
    assembly = new PlanAssembly(request, sites, candidates, work, model, findings);
  }

  /** A planner that has found machine, risers and outlets for a request. */
  public static LinePlanner of(LineRequest request) {
    return new LinePlanner(request);
  }

  /** The plan for a request; what cannot be reached is in it with the reason. */
  public static LinePlan plan(LineRequest request) {
    return of(request).plan();
  }

  /** The request as planned: with ground beside the building where some had to be assumed. */
  public LineRequest request() {
    return request;
  }

  /** The best plan. */
  public LinePlan plan() {
    return assembly.of(best, compared.stream().map(Comparison.Compared::row).toList());
  }

  /**
   * The plan from one of the spots that {@link #plan()} compares, taken alone.
   *
   * @throws IllegalArgumentException for any other spot
   */
  public LinePlan from(SpotComparison row) {
    return compared.stream()
        .filter(c -> c.row().equals(row))
        .findFirst()
        .map(c -> assembly.of(c.result(), List.of(row)))
        .orElseThrow(() -> new IllegalArgumentException(row.spot().name() + " was not compared"));
  }

  private static WorkPlan gather(LineRequest request, Sites sites) {
    var free =
        IntStream.range(0, request.floors().size()).mapToObj(f -> sites.of(f).free()).toList();
    return new WorkGatherer(request.floors(), free, request.reach(), CELL, ASIDE)
        .gather(request.work());
  }
}
