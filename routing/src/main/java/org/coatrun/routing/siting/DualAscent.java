package org.coatrun.routing.siting;

import java.util.Arrays;

/**
 * Raises what each cell is willing to pay, level by level, as long as outlets have slack; the sum
 * is a bound that no choice of outlets beats (D. Erlenkotter, A Dual-Based Procedure for
 * Uncapacitated Facility Location, Operations Research 26, 1978).
 */
final class DualAscent {

  static final double EPS = 1e-9;

  /** What is decided of an outlet. */
  enum Status {
    FREE,
    OPEN,
    CLOSED
  }

  private final OutletCosts costs;
  private final Status[] status;
  private final double[] dual;
  private final double[] slack;
  private final int[] level;
  private final boolean[] blocked;
  private final boolean closed;

  private DualAscent(OutletCosts costs, Status[] status) {
    this.costs = costs;
    this.status = status;
    dual = new double[costs.cells()];
    slack = new double[costs.outlets()];
    level = new int[costs.cells()];
    blocked = new boolean[costs.cells()];
    closed = Arrays.asList(status).contains(Status.CLOSED);
  }

  /**
   * What the ascent comes to.
   *
   * @param bound infinite where some cell has no outlet left
   * @param dual what each cell pays
   * @param slack of each outlet: none where cells pay for it in full
   */
  record Prices(double bound, double[] dual, double[] slack) {

    boolean paid(int outlet) {
      return slack[outlet] <= EPS;
    }
  }

  static Prices of(OutletCosts costs, Status[] status) {
    var ascent = new DualAscent(costs, status);
    return new Prices(ascent.bound(), ascent.dual, ascent.slack);
  }

  private double bound() {
    double sum = 0;
    for (int i = 0; i < slack.length; i++) {
      slack[i] = status[i] == Status.OPEN ? 0 : costs.fixed(i);
      sum += status[i] == Status.OPEN ? costs.fixed(i) : 0;
    }
    for (int c = 0; c < dual.length; c++) {
      level[c] = skip(c, 0);
      if (level[c] == costs.order(c).length) {
        return Double.POSITIVE_INFINITY;
      }
      dual[c] = costs.sorted(c)[level[c]];
    }
    boolean raised = true;
    while (raised) {
      raised = false;
      for (int c = 0; c < dual.length; c++) {
        raised |= !blocked[c] && raise(c);
      }
    }
    return sum + Arrays.stream(dual).sum();
  }

  /** Slack never grows: a cell that cannot be raised once never can. */
  private boolean raise(int c) {
    int[] order = costs.order(c);
    double[] cost = costs.sorted(c);
    int next = level[c];
    double room = Double.POSITIVE_INFINITY;
    while (next < order.length && cost[next] <= dual[c] + EPS) {
      int i = order[next];
      room = status[i] == Status.CLOSED ? room : Math.min(room, slack[i]);
      next = closed ? skip(c, next + 1) : next + 1;
    }
    double step = next < order.length ? Math.min(room, cost[next] - dual[c]) : room;
    blocked[c] = !(step > EPS);
    if (blocked[c]) {
      return false;
    }
    for (int k = level[c]; k < next; k++) {
      slack[order[k]] -= step;
    }
    dual[c] += step;
    return true;
  }

  /** The next outlet in the cell's order that is not closed. */
  private int skip(int c, int from) {
    int[] order = costs.order(c);
    int k = from;
    while (k < order.length && status[order[k]] == Status.CLOSED) {
      k++;
    }
    return k;
  }
}
