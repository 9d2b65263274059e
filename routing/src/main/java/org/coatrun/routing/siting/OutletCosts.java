package org.coatrun.routing.siting;

import java.util.Arrays;

/** What outlets of one floor cost, and for each cell those that can serve it, cheapest first. */
final class OutletCosts {

  private final double[] fixed;
  private final double[][] cost;
  private final int[][] order;
  private final double[][] sorted;

  /**
   * @param fixed cost of each outlet
   * @param cost of serving each cell from each outlet; infinite where impossible
   */
  OutletCosts(double[] fixed, double[][] cost) {
    this.fixed = fixed;
    this.cost = cost;
    order = new int[cost.length == 0 ? 0 : cost[0].length][];
    sorted = new double[order.length][];
    for (int c = 0; c < order.length; c++) {
      int cell = c;
      sorted[c] =
          Arrays.stream(cost)
              .mapToDouble(row -> row[cell])
              .filter(Double::isFinite)
              .sorted()
              .toArray();
      order[c] = inOrder(c);
    }
  }

  /** Every outlet at the first place of its cost that is not taken. */
  private int[] inOrder(int cell) {
    double[] costs = sorted[cell];
    int[] outlets = new int[costs.length];
    Arrays.fill(outlets, -1);
    for (int i = 0; i < fixed.length; i++) {
      if (Double.isFinite(cost[i][cell])) {
        int k = Arrays.binarySearch(costs, cost[i][cell]);
        while (k > 0 && costs[k - 1] == costs[k]) {
          k--;
        }
        while (outlets[k] >= 0) {
          k++;
        }
        outlets[k] = i;
      }
    }
    return outlets;
  }

  int outlets() {
    return fixed.length;
  }

  int cells() {
    return order.length;
  }

  double fixed(int outlet) {
    return fixed[outlet];
  }

  double cost(int outlet, int cell) {
    return cost[outlet][cell];
  }

  /** The outlets that can serve a cell, cheapest first. */
  int[] order(int cell) {
    return order[cell];
  }

  /** What these outlets cost the cell, ascending. */
  double[] sorted(int cell) {
    return sorted[cell];
  }

  /** The cheapest open outlet of a cell, or −1. */
  int cheapest(int cell, boolean[] open) {
    for (int i : order[cell]) {
      if (open[i]) {
        return i;
      }
    }
    return -1;
  }
}
