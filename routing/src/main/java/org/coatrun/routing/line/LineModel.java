package org.coatrun.routing.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.IntStream;
import org.coatrun.routing.network.Target;
import org.coatrun.routing.siting.CoverFloor;
import org.coatrun.routing.siting.CoverOption;
import org.coatrun.routing.siting.CoverProblem;
import org.coatrun.shared.line.LineCosts;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Riser;
import org.coatrun.shared.line.WorkCell;
import org.coatrun.shared.shape.Vec2;

/** A request in the bare numbers of the covering problem, and back. */
final class LineModel {

  private final LineRequest request;
  private final Sites sites;
  private final List<MachineSpot> spots;
  private final List<Riser> risers;
  private final List<WorkCell> cells;
  private final List<LineOption> options;
  private final List<FloorClass> classes;
  private final Laying laying;
  private final CoverProblem problem;

  LineModel(
      LineRequest request,
      Sites sites,
      List<MachineSpot> spots,
      List<Riser> risers,
      List<WorkCell> cells) {
    this.request = request;
    this.sites = sites;
    this.spots = List.copyOf(spots);
    this.risers = List.copyOf(risers);
    this.cells = List.copyOf(cells);
    laying = new Laying(request.limits());
    options = LineOptions.of(request, sites, spots, risers);
    classes = classes();
    problem = build();
  }

  CoverProblem problem() {
    return problem;
  }

  List<LineOption> options() {
    return options;
  }

  List<FloorClass> floorClasses() {
    return classes;
  }

  /** Height of a floor over the option's machine, negative below it, in metres. */
  double rise(LineOption option, int floor) {
    return request.floors().get(floor).elevation().metres()
        - request.floors().get(option.from()).elevation().metres();
  }

  /** Whether the option's riser comes out on the floor within the limits. */
  boolean serves(LineOption option, int floor, FloorOutlets outlets) {
    boolean there =
        option.riser().isEmpty()
            ? outlets.atSpot(option.spot()) >= 0
            : outlets.atRiser(option.riser().get()) >= 0
                && risers.get(option.riser().get()).joins(option.from(), floor);
    return there && option.mayServe(floor, rise(option, floor), request.limits());
  }

  /** Flexible hose from the machine up to the floor, or infinity where it is not served. */
  double before(LineOption option, int floor, FloorOutlets outlets) {
    if (!serves(option, floor, outlets)) {
      return Double.POSITIVE_INFINITY;
    }
    boolean hoseRises = option.riser().isPresent() && !option.pipeRises();
    double up = hoseRises ? Math.abs(rise(option, floor)) + beside(option, floor, outlets) : 0;
    return option.ground().flexible() + up;
  }

  /** What lies between the riser and the free floor at both its ends, in metres. */
  double beside(LineOption option, int floor, FloorOutlets outlets) {
    int r = option.riser().orElseThrow();
    double foot =
        sites
            .of(option.from())
            .anchor(risers.get(r).at())
            .orElseThrow()
            .distance(risers.get(r).at());
    return foot + outlets.point(outlets.atRiser(r)).distance(risers.get(r).at());
  }

  private List<FloorClass> classes() {
    var byKey = new LinkedHashMap<Object, FloorClass>();
    for (int f = 0; f < request.floors().size(); f++) {
      List<Integer> here = cellsOn(f);
      if (!here.isEmpty()) {
        var outlets = new FloorOutlets(f, sites.of(f), risers, spots);
        Object key = List.of(sites.look(f), work(here), outlets.who(), befores(f, outlets));
        FloorClass known = byKey.get(key);
        byKey.put(key, known == null ? alone(f, outlets, here) : with(known, f, here));
      }
    }
    return List.copyOf(byKey.values());
  }

  private static FloorClass alone(int f, FloorOutlets outlets, List<Integer> here) {
    return new FloorClass(List.of(f), outlets, List.of(here));
  }

  private static FloorClass with(FloorClass known, int f, List<Integer> here) {
    var floors = new ArrayList<>(known.floors());
    var all = new ArrayList<>(known.cells());
    floors.add(f);
    all.add(here);
    return new FloorClass(floors, known.outlets(), all);
  }

  private List<Integer> cellsOn(int f) {
    return IntStream.range(0, cells.size()).filter(c -> cells.get(c).floor() == f).boxed().toList();
  }

  private List<List<Long>> work(List<Integer> here) {
    return here.stream()
        .map(cells::get)
        .map(
            c ->
                List.of(
                    Math.round(c.at().x() * 1e3),
                    Math.round(c.at().y() * 1e3),
                    Math.round(c.coating().cubicMetres() * 1e6)))
        .toList();
  }

  private List<Long> befores(int f, FloorOutlets outlets) {
    return options.stream().map(o -> Math.round(before(o, f, outlets) * 1e6)).toList();
  }

  private CoverProblem build() {
    double[] machine = new double[spots.size()];
    for (int m = 0; m < machine.length; m++) {
      machine[m] = request.costs().machine() + spots.get(m).extraCost();
    }
    List<CoverFloor> floors = classes.stream().map(this::coverFloor).toList();
    List<CoverOption> cover = options.stream().map(this::coverOption).toList();
    double limit = request.limits().flexible().metres() - request.limits().whip().metres();
    return new CoverProblem(machine, cover, floors, limit);
  }

  private CoverFloor coverFloor(FloorClass c) {
    List<WorkCell> here = c.cells().get(0).stream().map(cells::get).toList();
    List<Target> targets = here.stream().map(w -> sites.of(c.first()).target(w.at())).toList();
    double[] weight =
        here.stream()
            .mapToDouble(w -> w.coating().cubicMetres() * request.costs().breakdown())
            .toArray();
    double[][] hose = new double[c.outlets().size()][];
    for (int o = 0; o < hose.length; o++) {
      int outlet = o;
      hose[o] = targets.stream().mapToDouble(t -> c.outlets().hose(outlet, t, laying)).toArray();
    }
    return new CoverFloor(c.floors().size(), weight, hose);
  }

  private CoverOption coverOption(LineOption option) {
    double[] before = new double[classes.size()];
    double[][] outlet = new double[classes.size()][];
    for (int k = 0; k < before.length; k++) {
      FloorClass c = classes.get(k);
      before[k] = before(option, c.first(), c.outlets());
      outlet[k] = Double.isFinite(before[k]) ? outletCosts(option, c) : new double[0];
    }
    return new CoverOption(option.spot(), fixed(option), before, outlet);
  }

  private double[] outletCosts(LineOption option, FloorClass c) {
    double[] cost = new double[c.outlets().size()];
    LineCosts costs = request.costs();
    int own = start(option, c.outlets());
    boolean pipes = option.riser().isPresent() || option.pipeRises();
    for (int o = 0; o < cost.length; o++) {
      double pipe =
          pipes ? c.outlets().pipeLength(pipeFrom(option, c), o) : Double.POSITIVE_INFINITY;
      cost[o] = o == own ? costs.outlet() : costs.outlet() + costs.pipePerMetre() * pipe;
    }
    return cost;
  }

  /** The outlet that needs no pipe on the floor, or −1 where pipe begins at once. */
  int start(LineOption option, FloorOutlets outlets) {
    if (option.riser().isPresent()) {
      return outlets.atRiser(option.riser().get());
    }
    return option.pipeRises() ? -1 : outlets.atSpot(option.spot());
  }

  /** Where pipe over the floor begins. */
  Vec2 pipeFrom(LineOption option, FloorClass c) {
    if (option.riser().isPresent()) {
      return c.outlets().point(c.outlets().atRiser(option.riser().get()));
    }
    var path = option.ground().legs().get(option.ground().legs().size() - 1).path();
    return path.get(path.size() - 1);
  }

  private double fixed(LineOption option) {
    LineCosts costs = request.costs();
    double sum = costs.pipePerMetre() * option.ground().pipe();
    sum += costs.hosePerMetre() * option.ground().flexible();
    if (option.riser().isEmpty()) {
      return sum;
    }
    int end = option.highest() > option.from() ? option.highest() : option.lowest();
    double most = Math.abs(rise(option, end));
    double up = option.pipeRises() ? most * costs.pipePerMetre() : most * costs.hosePerMetre();
    return sum + up + costs.riser();
  }
}
