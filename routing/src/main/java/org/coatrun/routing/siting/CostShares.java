package org.coatrun.routing.siting;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What each cell pays towards each part of a {@link PaidTree}. A cell goes the way that is cheapest
 * to it, with all that it pays for parts on the way; as long as no part is paid more than it costs,
 * what all cells come to together is a bound that no choice of parts beats.
 *
 * <p>The shares are raised by projected subgradient steps with momentum (B. T. Polyak). The bound
 * is that of the relaxed problem in which parts are had in fractions and each cell flows through
 * the tree, as used for network design by A. Balakrishnan, T. L. Magnanti and R. T. Wong,
 * Operations Research 37, 1989.
 */
final class CostShares {

  private static final int STALLS = 10;
  private static final double FIRST_STEP = 0.3;
  private static final double GROWTH = 1.02;
  private static final double MOMENTUM = 0.97;
  private static final double LEAST_STEP = 1e-3;
  private static final double SAME = 1e-9;

  private final PaidTree tree;
  private final int[] before;
  private final int[] from;
  private final double[] cost;
  private final boolean[] out;
  private final double[][] share;
  private final double[][] last;
  private final double[][] way;
  private final int[] use;
  private final int[][] used;
  private final double paid;
  private double bound = Double.NEGATIVE_INFINITY;
  private double[][] best;
  private int steps;
  private double alpha = FIRST_STEP;
  private int stall;

  /** Every part paid for alike by the cells that may use it. */
  CostShares(PaidTree tree) {
    this.tree = tree;
    before = IntStream.range(0, tree.size()).map(n -> tree.part(n).before()).toArray();
    from = IntStream.range(0, tree.size()).map(n -> tree.part(n).from()).toArray();
    paid = 0;
    cost = new double[tree.size()];
    out = new boolean[tree.size()];
    share = new double[tree.size()][];
    boolean[][] reach = tree.reach();
    for (int n = 0; n < cost.length; n++) {
      cost[n] = tree.part(n).cost();
      share[n] = Shares.even(reach[n], cost[n]);
    }
    way = new double[cost.length][];
    used = new int[cost.length][];
    for (int n = 0; n < cost.length; n++) {
      way[n] = new double[share[n].length];
      used[n] = new int[share[n].length];
    }
    use = new int[tree.cells()];
    last = Shares.copy(share);
    best = Shares.copy(share);
  }

  /** From the best shares of others, with some parts paid for and others done without. */
  private CostShares(CostShares like, double paid, double[] cost, boolean[] out) {
    tree = like.tree;
    before = like.before;
    from = like.from;
    this.paid = paid;
    this.cost = cost;
    this.out = out.clone();
    share = Shares.copy(like.best);
    for (int n = 0; n < cost.length; n++) {
      if (cost[n] == 0) {
        Arrays.fill(share[n], 0);
      }
    }
    way = like.way;
    used = like.used;
    use = like.use;
    last = Shares.copy(share);
    best = Shares.copy(share);
  }

  /** The same where part {@code n} and those before it are had, and paid for. */
  CostShares with(int n) {
    double[] left = cost.clone();
    double sum = paid;
    for (int k = n; k >= 0; k = before[k]) {
      sum += left[k];
      left[k] = 0;
    }
    return new CostShares(this, sum, left, out);
  }

  /** The same without part {@code n} and all behind it. */
  CostShares without(int n) {
    boolean[] less = out.clone();
    less[n] = true;
    return new CostShares(this, paid, cost, behind(less));
  }

  private boolean[] behind(boolean[] less) {
    for (int k = 0; k < less.length; k++) {
      less[k] |= before[k] >= 0 && less[before[k]];
    }
    return less;
  }

  /** How much there is to look at in one step: pairs of a cell and a part that it may pay for. */
  long size() {
    return Arrays.stream(share).mapToLong(row -> row.length).sum();
  }

  /** No choice of parts comes below this; infinite where some cell cannot be served. */
  double bound() {
    return bound;
  }

  /** Raises the bound until it reaches {@code enough}, or by so many steps more. */
  void raise(double enough, int most) {
    steps = 0;
    for (int[] row : used) {
      Arrays.fill(row, 0);
    }
    for (int k = 0; k <= most && bound < enough && alpha > LEAST_STEP; k++) {
      double now = paid + value();
      if (now > bound + SAME * Math.abs(bound) || bound == Double.NEGATIVE_INFINITY) {
        bound = now;
        Shares.keep(share, best);
        alpha *= GROWTH;
        stall = 0;
      } else if (++stall >= STALLS) {
        alpha /= 2;
        stall = 0;
      }
      if (now < enough && !move(alpha * (enough - now))) {
        return;
      }
    }
  }

  private double value() {
    for (int n = 0; n < way.length; n++) {
      if (!out[n]) {
        addUp(n);
      }
    }
    double[] least = new double[use.length];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    for (int i = 0; i < tree.outlets(); i++) {
      int n = tree.place(i);
      if (!out[n]) {
        compare(i, way[n], from[n], least);
      }
    }
    return Arrays.stream(least).sum();
  }

  private void addUp(int n) {
    double[] row = way[n];
    double[] own = share[n];
    if (before[n] < 0) {
      System.arraycopy(own, 0, row, 0, row.length);
      return;
    }
    double[] up = way[before[n]];
    int shift = from[n] - from[before[n]];
    for (int c = 0; c < row.length; c++) {
      row[c] = own[c] + up[c + shift];
    }
  }

  private void compare(int outlet, double[] row, int start, double[] least) {
    double[] serve = tree.serving(outlet);
    for (int c = 0; c < serve.length; c++) {
      double sum = serve[c] + row[c];
      if (sum < least[start + c]) {
        least[start + c] = sum;
        use[start + c] = outlet;
      }
    }
  }

  /** Cells pay more for all on their ways; where there is nothing left to pay for, none can. */
  private boolean move(double length) {
    steps++;
    int square = 0;
    for (int c = 0; c < use.length; c++) {
      for (int n = tree.place(use[c]); n >= 0; n = before[n]) {
        used[n][c - from[n]]++;
        square += cost[n] > 0 ? 1 : 0;
      }
    }
    for (int n = 0; n < cost.length; n++) {
      if (cost[n] > 0 && !out[n]) {
        Shares.drift(share[n], last[n], MOMENTUM);
      }
    }
    double by = length / square;
    for (int c = 0; c < use.length; c++) {
      for (int n = tree.place(use[c]); n >= 0; n = before[n]) {
        share[n][c - from[n]] += cost[n] > 0 ? by : 0;
      }
    }
    for (int n = 0; n < cost.length; n++) {
      if (cost[n] > 0 && !out[n]) {
        Shares.project(share[n], cost[n]);
      }
    }
    return square > 0;
  }

  /** For each part, by how much the bound rises at least where it is had. */
  private double[] rises() {
    double[] rise = new double[cost.length];
    for (int n = 0; n < rise.length; n++) {
      double lacking = Math.max(0, cost[n] - Arrays.stream(best[n]).sum());
      rise[n] = lacking + (before[n] < 0 ? 0 : rise[before[n]]);
    }
    return rise;
  }

  /**
   * The part, neither paid for nor done without, that is most in doubt; −1 where none is. Does
   * without all parts that lift the bound to {@code enough} where they are had.
   */
  int doubtful(double enough) {
    exclude(enough);
    return doubtful();
  }

  /** Does without all parts that lift the bound to {@code enough} where they are had. */
  void exclude(double enough) {
    double[] rise = rises();
    for (int n = 0; n < rise.length; n++) {
      out[n] |= bound + rise[n] >= enough;
    }
  }

  /** Whether a part is done without. */
  boolean isOut(int n) {
    return out[n];
  }

  private int doubtful() {
    int worst = -1;
    double most = -1;
    for (int n = 0; n < cost.length; n++) {
      int uses = Arrays.stream(used[n]).max().orElse(0);
      if (!out[n] && cost[n] > 0 && uses > 0) {
        double part = Math.min(1, (double) uses / Math.max(1, steps));
        double doubt = cost[n] * part * (1 - part);
        if (doubt > most) {
          most = doubt;
          worst = n;
        }
      }
    }
    return worst;
  }

  /** The outlets that some cell used at half of the steps or more. */
  boolean[] likely() {
    boolean[] likely = new boolean[tree.outlets()];
    for (int i = 0; i < likely.length; i++) {
      likely[i] = Arrays.stream(used[tree.place(i)]).max().orElse(0) * 2 >= Math.max(1, steps);
    }
    return likely;
  }
}
