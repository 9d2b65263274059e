package org.coatrun.routing.siting;

import java.util.Arrays;
import org.coatrun.routing.siting.DualAscent.Status;

/**
 * Which outlets of one floor to set up, every cell served by its cheapest one: the uncapacitated
 * facility location problem, exact by branch and bound on {@link DualAscent}.
 *
 * <p>Every cell must have an outlet of finite cost.
 */
final class OutletChoice {

  private static final double EPS = DualAscent.EPS;

  private final OutletCosts costs;
  private final int most;
  private int nodes;
  private double best = Double.POSITIVE_INFINITY;
  private double proven = Double.POSITIVE_INFINITY;
  private boolean[] chosen;

  private OutletChoice(OutletCosts costs, int most) {
    this.costs = costs;
    this.most = most;
    chosen = new boolean[costs.outlets()];
  }

  /**
   * The outlets set up, their cost with all cells served, and a bound that no choice beats.
   *
   * @param outlets which are set up
   */
  record Choice(boolean[] outlets, double cost, double bound) {}

  /**
   * @param fixed cost of each outlet
   * @param cost of serving each cell from each outlet; infinite where impossible
   * @param most nodes looked at; one gives a good choice and its bound at once
   */
  static Choice solve(double[] fixed, double[][] cost, int most) {
    var search = new OutletChoice(new OutletCosts(fixed, cost), most);
    if (search.costs.cells() == 0) {
      return new Choice(search.chosen, 0, 0);
    }
    Status[] status = new Status[fixed.length];
    Arrays.fill(status, Status.FREE);
    search.explore(status);
    return new Choice(search.chosen, search.best, Math.min(search.best, search.proven));
  }

  private void explore(Status[] status) {
    nodes++;
    DualAscent.Prices prices = DualAscent.of(costs, status);
    if (hopeless(prices)) {
      return;
    }
    boolean[] open = new PrimalChoice(costs, status, prices).open();
    offer(open);
    int branch = hopeless(prices) ? -1 : violating(status, prices.dual(), open);
    if (branch < 0) {
      return;
    }
    if (nodes >= most) {
      proven = Math.min(proven, prices.bound());
      return;
    }
    for (Status value : new Status[] {Status.OPEN, Status.CLOSED}) {
      Status[] child = status.clone();
      child[branch] = value;
      explore(child);
    }
  }

  private boolean hopeless(DualAscent.Prices prices) {
    return prices.bound() >= best - EPS * Math.max(1, best);
  }

  private void offer(boolean[] open) {
    boolean[] used = new boolean[open.length];
    double sum = 0;
    for (int c = 0; c < costs.cells(); c++) {
      int i = costs.cheapest(c, open);
      if (i < 0) {
        return;
      }
      used[i] = true;
      sum += costs.cost(i, c);
    }
    for (int i = 0; i < used.length; i++) {
      sum += used[i] ? costs.fixed(i) : 0;
    }
    if (sum < best) {
      best = sum;
      chosen = used;
    }
  }

  /** A free outlet that a cell pays for although it uses another: where bound and choice differ. */
  private int violating(Status[] status, double[] dual, boolean[] open) {
    int worst = -1;
    double farthest = 0;
    for (int c = 0; c < costs.cells(); c++) {
      int used = costs.cheapest(c, open);
      for (int i : costs.order(c)) {
        double over = dual[c] - costs.cost(i, c);
        if (open[i] && i != used && status[i] == Status.FREE && over > farthest) {
          farthest = over;
          worst = i;
        }
      }
    }
    return worst >= 0 ? worst : anyFree(status, open);
  }

  private static int anyFree(Status[] status, boolean[] open) {
    int free = -1;
    for (int i = status.length - 1; i >= 0; i--) {
      free = status[i] == Status.FREE ? i : free;
    }
    for (int i = status.length - 1; i >= 0; i--) {
      free = status[i] == Status.FREE && open[i] ? i : free;
    }
    return free;
  }
}
