package org.coatrun.routing.siting;

import java.util.BitSet;
import java.util.function.Predicate;

/** The least cost by looking at every set of options and, on each floor, every set of outlets. */
final class AllCovers {

  private final CoverProblem problem;
  private final Predicate<BitSet> allowed;

  private AllCovers(CoverProblem problem, Predicate<BitSet> allowed) {
    this.problem = problem;
    this.allowed = allowed;
  }

  AllCovers(CoverProblem problem, int mostMachines) {
    this(problem, machines -> machines.cardinality() <= mostMachines);
  }

  /** From one machine spot alone. */
  static AllCovers from(int spot, CoverProblem problem) {
    return new AllCovers(problem, machines -> machines.length() == 0 || isOnly(spot, machines));
  }

  private static boolean isOnly(int spot, BitSet machines) {
    return machines.cardinality() == 1 && machines.get(spot);
  }

  /** Least cost with the penalty of uncovered cells. */
  double objective() {
    double best = Double.POSITIVE_INFINITY;
    int n = problem.options().size();
    for (int set = 0; set < 1 << n; set++) {
      var machines = new BitSet();
      double cost = 0;
      for (int j = 0; j < n; j++) {
        if ((set >> j & 1) == 1) {
          machines.set(problem.options().get(j).machine());
          cost += problem.options().get(j).fixed();
        }
      }
      if (allowed.test(machines)) {
        cost += machines.stream().mapToDouble(m -> problem.machineCost()[m]).sum();
        for (int f = 0; f < problem.floors().size(); f++) {
          cost += problem.floors().get(f).times() * floor(f, set);
        }
        best = Math.min(best, cost);
      }
    }
    return best;
  }

  private double floor(int f, int set) {
    int outlets = problem.floors().get(f).hose().length;
    int places = problem.options().size() * outlets;
    double best = Double.POSITIVE_INFINITY;
    for (int open = 0; open < 1 << places; open++) {
      double cost = 0;
      for (int p = 0; p < places && cost < best; p++) {
        if ((open >> p & 1) == 1) {
          CoverOption option = problem.options().get(p / outlets);
          boolean there = (set >> (p / outlets) & 1) == 1 && option.serves(f);
          cost += there ? option.outletCost()[f][p % outlets] : Double.POSITIVE_INFINITY;
        }
      }
      cost += pipe(f, open, outlets);
      for (int c = 0; c < problem.floors().get(f).cells() && cost < best; c++) {
        cost += cell(f, c, open, outlets);
      }
      best = Math.min(best, cost);
    }
    return best;
  }

  /** Each stretch once for every option, whichever and however many outlets lie behind it. */
  private double pipe(int f, int open, int outlets) {
    double sum = 0;
    for (int j = 0; j < problem.options().size(); j++) {
      Trunk trunk = problem.options().get(j).trunk().get(f);
      for (int n = 0; n < trunk.cost().length; n++) {
        boolean needed = false;
        for (int o = 0; o < outlets; o++) {
          needed |= (open >> (j * outlets + o) & 1) == 1 && isBehind(trunk, n, trunk.last()[o]);
        }
        sum += needed ? trunk.cost()[n] : 0;
      }
    }
    return sum;
  }

  private static boolean isBehind(Trunk trunk, int stretch, int from) {
    return from == stretch || (from > stretch && isBehind(trunk, stretch, trunk.before()[from]));
  }

  private double cell(int f, int c, int open, int outlets) {
    double least = problem.uncovered();
    for (int p = 0; p < problem.options().size() * outlets; p++) {
      if ((open >> p & 1) == 1) {
        CoverOption option = problem.options().get(p / outlets);
        least = Math.min(least, problem.cost(option, f, p % outlets, c));
      }
    }
    return least;
  }
}
