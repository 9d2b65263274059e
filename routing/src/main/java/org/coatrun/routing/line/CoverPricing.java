package org.coatrun.routing.line;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.coatrun.routing.network.PipeTree;
import org.coatrun.routing.network.Target;
import org.coatrun.routing.siting.CoverFloor;
import org.coatrun.routing.siting.CoverOption;
import org.coatrun.routing.siting.CoverProblem;
import org.coatrun.routing.siting.Trunk;
import org.coatrun.shared.line.LineCosts;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.WorkCell;
import org.coatrun.shared.shape.Vec2;

/** Puts a price on machines, ways and outlets: the covering problem of a request. */
final class CoverPricing {

  private final LineRequest request;
  private final Sites sites;
  private final List<WorkCell> cells;
  private final LineWays ways;
  private final List<FloorClass> classes;
  private final Laying laying;
  private final Map<TrunkKey, Trunk> trunks = new HashMap<>();

  /** Where pipe over the floors of a class begins. */
  private record TrunkKey(int floorClass, Vec2 from) {}

  CoverPricing(
      LineRequest request,
      Sites sites,
      List<WorkCell> cells,
      LineWays ways,
      List<FloorClass> classes) {
    this.request = request;
    this.sites = sites;
    this.cells = cells;
    this.ways = ways;
    this.classes = classes;
    laying = new Laying(request.limits());
  }

  CoverProblem problem(List<MachineSpot> spots) {
    double[] machine = new double[spots.size()];
    for (int m = 0; m < machine.length; m++) {
      machine[m] = request.costs().machine() + spots.get(m).extraCost();
    }
    List<CoverFloor> floors = classes.stream().map(this::coverFloor).toList();
    List<CoverOption> cover = ways.options().stream().map(this::coverOption).toList();
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
    Trunk[] trunk = new Trunk[classes.size()];
    for (int k = 0; k < before.length; k++) {
      FloorClass c = classes.get(k);
      before[k] = ways.before(option, c.first(), c.outlets());
      boolean served = Double.isFinite(before[k]);
      trunk[k] = served && pipes(option) ? trunk(option, k) : Trunk.none(c.outlets().size());
      outlet[k] = served ? outletCosts(option, c, trunk[k]) : new double[0];
    }
    return new CoverOption(option.spot(), fixed(option), before, outlet, Arrays.asList(trunk));
  }

  private static boolean pipes(LineOption option) {
    return option.riser().isPresent() || option.pipeRises();
  }

  /** The same for all options whose pipe begins at one point. */
  private Trunk trunk(LineOption option, int k) {
    FloorClass c = classes.get(k);
    Vec2 from = ways.pipeFrom(option, c);
    return trunks.computeIfAbsent(new TrunkKey(k, from), key -> trunk(c.outlets().pipeTree(from)));
  }

  private Trunk trunk(PipeTree tree) {
    double metre = request.costs().pipePerMetre();
    double[] cost = Arrays.stream(tree.length()).map(l -> metre * l).toArray();
    return new Trunk(tree.before(), cost, tree.last());
  }

  /**
   * Of the outlet where the line comes out, which needs no pipe, and of those that pipe leads to.
   */
  private double[] outletCosts(LineOption option, FloorClass c, Trunk trunk) {
    double[] cost = new double[c.outlets().size()];
    int own = ways.start(option, c.outlets());
    for (int o = 0; o < cost.length; o++) {
      boolean there = o == own || trunk.last()[o] >= 0;
      cost[o] = there ? request.costs().outlet() : Double.POSITIVE_INFINITY;
    }
    return cost;
  }

  private double fixed(LineOption option) {
    LineCosts costs = request.costs();
    double sum = costs.pipePerMetre() * option.ground().pipe();
    sum += costs.hosePerMetre() * option.ground().flexible();
    if (option.riser().isEmpty()) {
      return sum;
    }
    int end = option.highest() > option.from() ? option.highest() : option.lowest();
    double most = Math.abs(ways.rise(option, end));
    double up = option.pipeRises() ? most * costs.pipePerMetre() : most * costs.hosePerMetre();
    return sum + up + costs.riser();
  }
}
