package org.coatrun.routing.siting;

import java.util.ArrayList;

/**
 * What outlets of one floor cost.
 *
 * @param fixed cost of each outlet without pipe
 * @param trunk pipe to the outlets
 * @param cost of serving each cell from each outlet; infinite where impossible
 */
record OutletCosts(double[] fixed, Trunk trunk, double[][] cost) {

  int outlets() {
    return fixed.length;
  }

  int cells() {
    return cost.length == 0 ? 0 : cost[0].length;
  }

  /** What these outlets come to with pipe and all cells served; infinite where one cannot be. */
  double sum(boolean[] open) {
    var used = new ArrayList<Integer>();
    double sum = 0;
    for (int i = 0; i < open.length; i++) {
      if (open[i]) {
        used.add(i);
        sum += fixed[i];
      }
    }
    for (int c = 0; c < cells(); c++) {
      double least = Double.POSITIVE_INFINITY;
      for (int i : used) {
        least = Math.min(least, cost[i][c]);
      }
      sum += least;
    }
    return sum + trunk.cost(used);
  }
}
