package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.coatrun.routing.floor.RiserFinder;
import org.coatrun.routing.floor.WorkGatherer;
import org.coatrun.routing.floor.WorkPlan;
import org.coatrun.routing.siting.Cover;
import org.coatrun.routing.siting.CoverResult;
import org.coatrun.routing.siting.CoverSearch;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.LineFinding;
import org.coatrun.shared.line.FloorCheck;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.Hardware;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.NoRoute;
import org.coatrun.shared.line.Proof;
import org.coatrun.shared.line.Riser;
import org.coatrun.shared.line.RiserUse;
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

  private static final double EDGE_RISERS = 15;
  private static final int COMPARED = 5;

  private final LineRequest request;
  private final Sites sites;
  private final List<Riser> risers;
  private final List<MachineSpot> spots;
  private final WorkPlan work;
  private final List<WorkCell> cells;
  private final LineModel model;
  private final List<Finding> findings = new ArrayList<>();

  private LinePlanner(LineRequest request) {
    this.request = request;
    sites = new Sites(request);
    risers = risers(request);
    spots = spots();
    work = gather();
    cells = work.cells();
    model = new LineModel(request, sites, spots, risers, cells);
  }

  /** The plan for a request; what cannot be reached is in it with the reason. */
  public static LinePlan plan(LineRequest request) {
    return new LinePlanner(request).plan();
  }

  private LinePlan plan() {
    CoverResult result =
        CoverSearch.solve(model.problem(), request.mostMachines(), request.searchNodes());
    List<Assignment> assigned = assignments(result.cover());
    List<Integer> used = result.cover().map(Cover::machines).orElse(List.of());
    var routes = routes(assigned, used);
    List<Optional<Route>> found =
        routes.stream()
            .map(r -> r instanceof Route route ? Optional.of(route) : Optional.<Route>empty())
            .toList();
    var setUps = new SetUps(request, model, spots, risers, cells, found);
    List<SetUp> order = setUps.inOrder(assigned);
    Findings.add(request, cells, routes, work, sites, result, spots, findings);
    List<FloorPlan> floors = floors(order, assigned, found);
    Findings.addChecks(floors, request.utilities().feederPercent(), findings);
    return new LinePlan(
        used.stream().map(spots::get).toList(),
        riserUses(assigned),
        cells,
        routes,
        floors,
        new Comparison(request, model, spots, risers).best(COMPARED),
        risers,
        work.groundless(),
        hardware(setUps, order, assigned, found),
        Moves.of(request.floors(), order),
        proof(result),
        findings.stream().sorted().toList());
  }

  private static Proof proof(CoverResult result) {
    double cost = result.cover().map(Cover::cost).orElse(0.0);
    return new Proof(cost, result.bound(), result.nodes(), result.optimal());
  }

  private static List<Riser> risers(LineRequest request) {
    var risers = new ArrayList<>(request.risers());
    if (request.findRisers()) {
      risers.addAll(RiserFinder.throughOpenings(request.floors()));
      risers.addAll(
          RiserFinder.alongEdges(
              request.floors(),
              request.site().truckAccess(),
              EDGE_RISERS,
              risers.size() - request.risers().size() + 1));
    }
    return List.copyOf(risers);
  }

  private List<MachineSpot> spots() {
    if (request.floors().isEmpty()) {
      return List.of();
    }
    if (request.spots().isEmpty()) {
      return new SpotFinder(request).find();
    }
    var free = new ArrayList<MachineSpot>();
    for (MachineSpot s : request.spots()) {
      var at = sites.of(s.floor()).free().nearest(s.at(), request.limits().riserGap());
      if (at.isPresent()) {
        free.add(new MachineSpot(s.name(), s.floor(), at.get(), s.extraCost(), s.needs()));
      } else {
        findings.add(
            Finding.of(LineFinding.SPOT_NOT_FREE, "Machine spot " + s.name() + " was left out."));
      }
    }
    return List.copyOf(free);
  }

  private WorkPlan gather() {
    var free =
        IntStream.range(0, request.floors().size()).mapToObj(f -> sites.of(f).free()).toList();
    return new WorkGatherer(request.floors(), free, request.reach(), CELL, ASIDE)
        .gather(request.work());
  }

  private List<Assignment> assignments(Optional<Cover> cover) {
    var all = new ArrayList<Assignment>();
    for (int c = 0; c < cells.size(); c++) {
      all.add(new Assignment(-1, -1, -1));
    }
    for (int k = 0; k < model.floorClasses().size(); k++) {
      for (List<Integer> floor : model.floorClasses().get(k).cells()) {
        for (int i = 0; i < floor.size(); i++) {
          int option = cover.isEmpty() ? -1 : cover.get().floors().get(k).option()[i];
          int outlet = cover.isEmpty() ? -1 : cover.get().floors().get(k).outlet()[i];
          all.set(floor.get(i), new Assignment(k, option, outlet));
        }
      }
    }
    return all;
  }

  private List<RouteResult> routes(List<Assignment> assigned, List<Integer> used) {
    var builder = new RouteBuilder(request, sites, model);
    var misses = new Misses(request, sites, model, spots, risers);
    var routes = new ArrayList<RouteResult>();
    for (int c = 0; c < cells.size(); c++) {
      Assignment a = assigned.get(c);
      WorkCell cell = cells.get(c);
      if (a.reached()) {
        LineOption option = model.options().get(a.option());
        FloorClass on = model.floorClasses().get(a.floorClass());
        routes.add(builder.route(option, on, cell.floor(), a.outlet(), cell.at()));
      } else if (spots.isEmpty()) {
        routes.add(
            new NoRoute(NoRoute.Limit.NO_MACHINE, Length.ZERO, "there is no place for a machine"));
      } else {
        List<Integer> by =
            used.isEmpty() ? IntStream.range(0, spots.size()).boxed().toList() : used;
        routes.add(misses.of(cell, model.floorClasses().get(a.floorClass()), by));
      }
    }
    return routes;
  }

  private List<RiserUse> riserUses(List<Assignment> assigned) {
    var far = new TreeMap<Integer, Integer>();
    for (int c = 0; c < assigned.size(); c++) {
      Assignment a = assigned.get(c);
      if (a.reached() && model.options().get(a.option()).riser().isPresent()) {
        int from = model.options().get(a.option()).from();
        far.merge(
            a.option(),
            cells.get(c).floor(),
            (x, y) -> Math.abs(x - from) >= Math.abs(y - from) ? x : y);
      }
    }
    var uses = new ArrayList<RiserUse>();
    far.forEach((j, floor) -> uses.add(riserUse(model.options().get(j), floor)));
    return uses;
  }

  private RiserUse riserUse(LineOption option, int to) {
    return new RiserUse(
        risers.get(option.riser().orElseThrow()),
        spots.get(option.spot()).name(),
        option.pipeRises(),
        option.ground().legs(),
        option.from(),
        to,
        Length.ofMetres(Math.abs(model.rise(option, to))));
  }

  private List<FloorPlan> floors(
      List<SetUp> order, List<Assignment> assigned, List<Optional<Route>> routes) {
    var checker = new FloorChecks(request, model, spots, cells, assigned, routes);
    var floors = new ArrayList<FloorPlan>();
    for (int f = 0; f < request.floors().size(); f++) {
      int floor = f;
      List<Integer> here =
          IntStream.range(0, cells.size())
              .filter(c -> cells.get(c).floor() == floor)
              .boxed()
              .toList();
      Optional<FloorCheck> check = checker.of(floor, here);
      floors.add(
          new FloorPlan(
              request.floors().get(f),
              sites.of(f).free().regions(),
              here,
              order.stream().filter(s -> s.floor() == floor).toList(),
              check));
    }
    return floors;
  }

  /** What stands, riser by riser, and the most that any outlet asks for besides. */
  private List<Hardware> hardware(
      SetUps setUps, List<SetUp> order, List<Assignment> assigned, List<Optional<Route>> routes) {
    List<Hardware> moving = List.of();
    var standing = new TreeMap<Integer, List<Hardware>>();
    for (SetUp s : order) {
      moving = Loading.most(moving, setUps.moving(s));
      int first = s.cells().get(0);
      int option = assigned.get(first).option();
      int passed = Math.abs(s.floor() - model.options().get(option).from());
      List<Hardware> own = setUps.standing(routes.get(first).orElseThrow(), passed);
      standing.merge(option, own, Loading::most);
    }
    List<Hardware> all = moving;
    for (List<Hardware> s : standing.values()) {
      all = Loading.sum(all, s);
    }
    return all.stream().sorted(Comparator.naturalOrder()).toList();
  }
}
