package org.coatrun.routing.siting;

import java.util.List;

/**
 * The problem with "each cell once" priced instead of forced: it falls apart into options, and each
 * option into outlets, so that its exact minimum is a sum.
 */
final class Relaxation {

  private final CoverProblem problem;

  /** Prices for each floor and cell. */
  static double[][] zeroPrices(CoverProblem problem) {
    return problem.floors().stream().map(f -> new double[f.cells()]).toArray(double[][]::new);
  }

  Relaxation(CoverProblem problem) {
    this.problem = problem;
  }

  /** What opening the option is worth at these prices: its cost less what its cells pay. */
  double value(CoverOption option, double[][] price) {
    double sum = option.fixed();
    List<CoverFloor> floors = problem.floors();
    for (int f = 0; f < floors.size(); f++) {
      if (option.serves(f)) {
        double all = 0;
        for (int o = 0; o < option.outletCost()[f].length; o++) {
          all += Math.min(0, outlet(option, f, o, price[f], null));
        }
        sum += floors.get(f).times() * all;
      }
    }
    return sum;
  }

  /** Counts, for each cell, the outlets of this option that would serve it at these prices. */
  void count(CoverOption option, double[][] price, int[][] served) {
    for (int f = 0; f < problem.floors().size(); f++) {
      for (int o = 0; option.serves(f) && o < option.outletCost()[f].length; o++) {
        if (outlet(option, f, o, price[f], null) < 0) {
          outlet(option, f, o, price[f], served[f]);
        }
      }
    }
  }

  private double outlet(CoverOption option, int f, int o, double[] price, int[] served) {
    double sum = option.outletCost()[f][o];
    if (Double.isInfinite(sum)) {
      return 0;
    }
    double[] hose = problem.floors().get(f).hose()[o];
    double[] weight = problem.floors().get(f).weight();
    double before = option.before()[f];
    double most = problem.limit() + CoverProblem.NOISE - before;
    for (int c = 0; c < hose.length; c++) {
      if (hose[c] <= most) {
        double net = weight[c] * (before + hose[c]) - price[c];
        if (net < 0) {
          sum += net;
          if (served != null) {
            served[c]++;
          }
        }
      }
    }
    return sum;
  }
}
