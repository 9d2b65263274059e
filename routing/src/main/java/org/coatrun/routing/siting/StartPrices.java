package org.coatrun.routing.siting;

import java.util.List;

/** Prices to begin with: what the nearest way costs each cell. */
final class StartPrices {

  private StartPrices() {}

  /** By floor and cell, with these options; zero where no way leads to a cell. */
  static double[][] of(CoverProblem problem, List<Integer> options) {
    double[][] price = Relaxation.zeroPrices(problem);
    for (int f = 0; f < price.length; f++) {
      for (int c = 0; c < price[f].length; c++) {
        price[f][c] = nearest(problem, options, f, c);
      }
    }
    return price;
  }

  private static double nearest(CoverProblem problem, List<Integer> options, int f, int c) {
    double least = Double.POSITIVE_INFINITY;
    for (int j : options) {
      CoverOption option = problem.options().get(j);
      for (int o = 0; option.serves(f) && o < option.outletCost()[f].length; o++) {
        if (Double.isFinite(option.outletCost()[f][o])) {
          least = Math.min(least, problem.cost(option, f, o, c));
        }
      }
    }
    return Double.isFinite(least) ? least : 0;
  }
}
