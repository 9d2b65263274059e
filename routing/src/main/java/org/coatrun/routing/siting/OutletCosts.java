package org.coatrun.routing.siting;

import java.util.Comparator;
import java.util.stream.IntStream;

/** What outlets of one floor cost, and for each cell those that can serve it, cheapest first. */
final class OutletCosts {

  private final double[] fixed;
  private final double[][] cost;
  private final int[][] order;

  /**
   * @param fixed cost of each outlet
   * @param cost of serving each cell from each outlet; infinite where impossible
   */
  OutletCosts(double[] fixed, double[][] cost) {
    this.fixed = fixed;
    this.cost = cost;
    order = new int[cost.length == 0 ? 0 : cost[0].length][];
    for (int c = 0; c < order.length; c++) {
      order[c] = inOrder(c);
    }
  }

  private int[] inOrder(int cell) {
    return IntStream.range(0, fixed.length)
        .filter(i -> Double.isFinite(cost[i][cell]))
        .boxed()
        .sorted(Comparator.comparingDouble(i -> cost[i][cell]))
        .mapToInt(Integer::intValue)
        .toArray();
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
