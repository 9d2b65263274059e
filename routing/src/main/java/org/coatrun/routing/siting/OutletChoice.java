package org.coatrun.routing.siting;

import java.util.stream.IntStream;

/**
 * Which outlets of one floor to set up, every cell served by its cheapest one: the uncapacitated
 * facility location problem with pipe that outlets share, exact by branch and bound on {@link
 * CostShares}.
 *
 * <p>Every cell must have an outlet of finite cost.
 */
final class OutletChoice {

  private static final int STEPS = 50;
  private static final double PROGRESS = 0.08;

  /** A floor of this size is one part of a search; larger ones count for more. */
  private static final int SMALL = 20_000;

  private final OutletCosts costs;
  private boolean[] chosen;
  private double best;
  private CostShares root;
  private double bound;
  private int work;
  private double unproven = Double.POSITIVE_INFINITY;

  /** A good choice, without a bound. */
  OutletChoice(OutletCosts costs) {
    this.costs = costs;
    chosen = OutletSwaps.from(new boolean[costs.outlets()], costs);
    best = costs.cells() == 0 ? 0 : costs.sum(chosen);
  }

  /** The outlet that serves a cell. */
  int serving(int cell) {
    int best = -1;
    for (int i = 0; i < chosen.length; i++) {
      if (chosen[i] && (best < 0 || costs.cost()[i][cell] < costs.cost()[best][cell])) {
        best = i;
      }
    }
    return best;
  }

  /** What they cost with all cells served. */
  double cost() {
    return best;
  }

  /** No choice costs less than this; zero until it was asked to be bounded. */
  double bound() {
    return Math.min(bound, best);
  }

  /** Finds a first bound, up to {@code enough}, and better choices on the way to it. */
  void bounded(double enough, Budget budget) {
    if (costs.cells() == 0) {
      return;
    }
    var tree = new PaidTree();
    int[] all = IntStream.range(0, costs.outlets()).toArray();
    tree.addPipe(-1, costs.trunk(), all, costs.fixed(), costs.cost(), 1, 0);
    root = new CostShares(tree);
    work = 1 + (int) (root.size() / SMALL);
    raise(root, enough, budget);
    bound = root.bound();
  }

  /**
   * Looks for the best choice, or for proof that none costs less than {@code enough}, as long as
   * the budget lasts.
   */
  void settle(double enough, Budget budget) {
    if (bound() < target(enough)) {
      explore(root, enough, budget);
      bound = Math.max(bound, Math.min(unproven, enough));
    }
  }

  private void explore(CostShares from, double enough, Budget budget) {
    CostShares part = from;
    while (part != null) {
      raise(part, enough, budget);
      boolean hopeful = part.bound() < target(enough);
      if (hopeful && budget.isSpent()) {
        unproven = Math.min(unproven, part.bound());
      }
      int on = hopeful && !budget.isSpent() ? part.doubtful(target(enough)) : -1;
      if (on >= 0) {
        explore(part.with(on), enough, budget);
      }
      part = on >= 0 ? part.without(on) : null;
    }
  }

  /** As long as that brings the bound nearer to what is asked for. */
  private void raise(CostShares part, double enough, Budget budget) {
    double before;
    do {
      before = part.bound();
      part.raise(target(enough), STEPS);
      budget.spend(work);
      if (part.bound() < target(enough)) {
        offer(OutletSwaps.from(part.likely(), costs));
      }
    } while (!budget.isSpent()
        && part.bound() < target(enough)
        && part.bound() - before > PROGRESS * (target(enough) - part.bound()));
  }

  private void offer(boolean[] open) {
    double sum = costs.sum(open);
    if (sum < best) {
      best = sum;
      chosen = open;
    }
  }

  /**
   * What is no less than this is not asked for, or not better than the best by more than rounding.
   */
  private double target(double enough) {
    return Math.min(enough, best - Incumbent.noise(best));
  }
}
