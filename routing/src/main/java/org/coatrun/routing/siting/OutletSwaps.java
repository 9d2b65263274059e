package org.coatrun.routing.siting;

import java.util.Arrays;

/**
 * A good choice of outlets: one more, one less or one for another, the best of these each time, as
 * long as that saves something.
 */
final class OutletSwaps {

  private static final double SAME = 1e-9;

  private final OutletCosts costs;
  private final double unserved;
  private final double[] nearest;
  private final boolean[] laid;

  private OutletSwaps(OutletCosts costs) {
    this.costs = costs;
    unserved = 2 * most(costs);
    nearest = new double[costs.cells()];
    laid = new boolean[costs.trunk().stretches()];
  }

  /** More than any outlet with its pipe, or any cell, costs. */
  private static double most(OutletCosts costs) {
    double hose =
        Arrays.stream(costs.cost())
            .mapToDouble(row -> Arrays.stream(row).filter(Double::isFinite).sum())
            .max()
            .orElse(0);
    return 1 + hose + Arrays.stream(costs.fixed()).max().orElse(0) + costs.trunk().dearest();
  }

  /** The choice reached from another one. */
  static boolean[] from(boolean[] start, OutletCosts costs) {
    var swaps = new OutletSwaps(costs);
    boolean[] open = start.clone();
    double sum = swaps.without(-1, open);
    boolean better = true;
    while (better) {
      int[] best = {-1, -1};
      double least = sum - SAME * Math.max(1, sum);
      for (int drop = -1; drop < open.length; drop++) {
        if (drop < 0 || open[drop]) {
          double base = swaps.without(drop, open);
          for (int add = -1; add < open.length; add++) {
            double now = base + (add < 0 ? 0 : open[add] ? base : swaps.more(add));
            if (now < least) {
              least = now;
              best = new int[] {drop, add};
            }
          }
        }
      }
      better = best[0] >= 0 || best[1] >= 0;
      if (better) {
        change(open, best);
        sum = least;
      }
    }
    return open;
  }

  private static void change(boolean[] open, int[] dropAndAdd) {
    if (dropAndAdd[0] >= 0) {
      open[dropAndAdd[0]] = false;
    }
    if (dropAndAdd[1] >= 0) {
      open[dropAndAdd[1]] = true;
    }
  }

  /** What all but one come to; remembers what is laid for them and how near they are. */
  private double without(int drop, boolean[] open) {
    Arrays.fill(nearest, unserved);
    Arrays.fill(laid, false);
    double sum = 0;
    for (int i = 0; i < open.length; i++) {
      if (open[i] && i != drop) {
        sum += costs.fixed()[i] + pipe(i);
        for (int n = costs.trunk().last()[i]; n >= 0; n = costs.trunk().before()[n]) {
          laid[n] = true;
        }
        double[] row = costs.cost()[i];
        for (int c = 0; c < row.length; c++) {
          nearest[c] = Math.min(nearest[c], row[c]);
        }
      }
    }
    return sum + Arrays.stream(nearest).sum();
  }

  /** By how much the sum grows where one more is set up. */
  private double more(int add) {
    double sum = costs.fixed()[add] + pipe(add);
    double[] row = costs.cost()[add];
    for (int c = 0; c < row.length; c++) {
      sum += row[c] < nearest[c] ? row[c] - nearest[c] : 0;
    }
    return sum;
  }

  private double pipe(int i) {
    Trunk trunk = costs.trunk();
    double sum = 0;
    for (int n = trunk.last()[i]; n >= 0 && !laid[n]; n = trunk.before()[n]) {
      sum += trunk.cost()[n];
    }
    return sum;
  }
}
