package org.coatrun.routing.siting;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Which outlets of one floor to set up, every cell served by its cheapest one: the uncapacitated
 * facility location problem, exact by branch and bound on dual ascent (D. Erlenkotter, A Dual-Based
 * Procedure for Uncapacitated Facility Location, Operations Research 26, 1978).
 *
 * <p>Every cell must have an outlet of finite cost.
 */
final class OutletChoice {

  private static final double EPS = 1e-9;
  private static final byte FREE = 0;
  private static final byte OPEN = 1;
  private static final byte CLOSED = 2;

  private final double[] fixed;
  private final double[][] cost;
  private final int cells;
  private final int[][] order;
  private final int most;
  private int nodes;
  private double best = Double.POSITIVE_INFINITY;
  private double proven = Double.POSITIVE_INFINITY;
  private boolean[] chosen;

  private OutletChoice(double[] fixed, double[][] cost, int most) {
    this.fixed = fixed;
    this.cost = cost;
    this.most = most;
    cells = cost.length == 0 ? 0 : cost[0].length;
    chosen = new boolean[fixed.length];
    order = new int[cells][];
    for (int c = 0; c < cells; c++) {
      int cell = c;
      order[c] =
          IntStream.range(0, fixed.length)
              .filter(i -> Double.isFinite(cost[i][cell]))
              .boxed()
              .sorted(Comparator.comparingDouble(i -> cost[i][cell]))
              .mapToInt(Integer::intValue)
              .toArray();
    }
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
    var search = new OutletChoice(fixed, cost, most);
    if (search.cells == 0) {
      return new Choice(search.chosen, 0, 0);
    }
    search.explore(new byte[fixed.length]);
    return new Choice(search.chosen, search.best, Math.min(search.best, search.proven));
  }

  private void explore(byte[] status) {
    nodes++;
    double[] dual = new double[cells];
    double[] slack = new double[fixed.length];
    double bound = ascend(status, dual, slack);
    if (bound >= best - EPS * Math.max(1, best)) {
      return;
    }
    boolean[] open = primal(status, dual, slack);
    offer(open);
    if (bound >= best - EPS * Math.max(1, best)) {
      return;
    }
    int branch = violating(status, dual, open);
    if (branch < 0) {
      return;
    }
    if (nodes >= most) {
      proven = Math.min(proven, bound);
      return;
    }
    for (byte value : new byte[] {OPEN, CLOSED}) {
      byte[] child = status.clone();
      child[branch] = value;
      explore(child);
    }
  }

  /** Raises what each cell is willing to pay, level by level, as long as outlets have slack. */
  private double ascend(byte[] status, double[] dual, double[] slack) {
    double bound = 0;
    for (int i = 0; i < fixed.length; i++) {
      slack[i] = status[i] == OPEN ? 0 : fixed[i];
      bound += status[i] == OPEN ? fixed[i] : 0;
    }
    int[] level = new int[cells];
    for (int c = 0; c < cells; c++) {
      int first = skip(status, c, 0);
      if (first == order[c].length) {
        return Double.POSITIVE_INFINITY;
      }
      level[c] = first;
      dual[c] = cost[order[c][first]][c];
    }
    boolean raised = true;
    while (raised) {
      raised = false;
      for (int c = 0; c < cells; c++) {
        raised |= raise(status, c, level, dual, slack);
      }
    }
    return bound + Arrays.stream(dual).sum();
  }

  private boolean raise(byte[] status, int c, int[] level, double[] dual, double[] slack) {
    int next = level[c];
    double room = Double.POSITIVE_INFINITY;
    while (next < order[c].length && cost[order[c][next]][c] <= dual[c] + EPS) {
      int i = order[c][next];
      room = status[i] == CLOSED ? room : Math.min(room, slack[i]);
      next = skip(status, c, next + 1);
    }
    double step = next < order[c].length ? Math.min(room, cost[order[c][next]][c] - dual[c]) : room;
    if (!(step > EPS)) {
      return false;
    }
    for (int k = level[c]; k < next; k++) {
      slack[order[c][k]] -= step;
    }
    dual[c] += step;
    return true;
  }

  private int skip(byte[] status, int c, int from) {
    int k = from;
    while (k < order[c].length && status[order[c][k]] == CLOSED) {
      k++;
    }
    return k;
  }

  /** Outlets without slack pay for themselves; keeps those that some cell has no other for. */
  private boolean[] primal(byte[] status, double[] dual, double[] slack) {
    boolean[] open = new boolean[fixed.length];
    for (int i = 0; i < fixed.length; i++) {
      open[i] = status[i] == OPEN;
    }
    for (int c = 0; c < cells; c++) {
      if (!served(c, dual, open)) {
        int only = soleOutlet(status, c, dual, slack);
        if (only >= 0) {
          open[only] = true;
        }
      }
    }
    for (int c = 0; c < cells; c++) {
      for (int k = 0; k < order[c].length && !served(c, dual, open); k++) {
        int i = order[c][k];
        open[i] |= status[i] != CLOSED && slack[i] <= EPS;
      }
    }
    return open;
  }

  private boolean served(int c, double[] dual, boolean[] open) {
    for (int i : order[c]) {
      if (open[i] && cost[i][c] <= dual[c] + EPS) {
        return true;
      }
    }
    return false;
  }

  private int soleOutlet(byte[] status, int c, double[] dual, double[] slack) {
    int only = -1;
    for (int i : order[c]) {
      if (status[i] != CLOSED && slack[i] <= EPS && cost[i][c] <= dual[c] + EPS) {
        if (only >= 0) {
          return -1;
        }
        only = i;
      }
    }
    return only;
  }

  private void offer(boolean[] open) {
    boolean[] used = new boolean[open.length];
    double sum = 0;
    for (int c = 0; c < cells; c++) {
      int i = cheapest(c, open);
      if (i < 0) {
        return;
      }
      used[i] = true;
      sum += cost[i][c];
    }
    for (int i = 0; i < used.length; i++) {
      sum += used[i] ? fixed[i] : 0;
    }
    if (sum < best) {
      best = sum;
      chosen = used;
    }
  }

  private int cheapest(int c, boolean[] open) {
    for (int i : order[c]) {
      if (open[i]) {
        return i;
      }
    }
    return -1;
  }

  /** A free outlet that a cell pays for although it uses another: where bound and choice differ. */
  private int violating(byte[] status, double[] dual, boolean[] open) {
    int worst = -1;
    double most = 0;
    for (int c = 0; c < cells; c++) {
      int used = cheapest(c, open);
      for (int i : order[c]) {
        if (open[i] && i != used && status[i] == FREE && dual[c] - cost[i][c] > most) {
          most = dual[c] - cost[i][c];
          worst = i;
        }
      }
    }
    for (int i = 0; worst < 0 && i < status.length; i++) {
      worst = status[i] == FREE && open[i] ? i : worst;
    }
    for (int i = 0; worst < 0 && i < status.length; i++) {
      worst = status[i] == FREE ? i : worst;
    }
    return worst;
  }
}
