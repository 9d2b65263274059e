package org.coatrun.routing.siting;

import java.util.List;

/**
 * The problem with "each cell once" priced instead of forced: it falls apart into options, and each
 * option into outlets, so that its exact minimum is a sum.
 *
 * <p>Most of a search is spent here; hence the plain arrays.
 */
final class Relaxation {

  private final CoverProblem problem;

  /** For each floor and outlet, what the hose alone costs each cell's material, or infinity. */
  private final double[][][] hoseCost;

  /** For each floor and outlet, the farthest cell to which any hose leads, in metres. */
  private final double[][] farthest;

  /** Prices for each floor and cell. */
  static double[][] zeroPrices(CoverProblem problem) {
    return problem.floors().stream().map(f -> new double[f.cells()]).toArray(double[][]::new);
  }

  Relaxation(CoverProblem problem) {
    this.problem = problem;
    List<CoverFloor> floors = problem.floors();
    hoseCost = new double[floors.size()][][];
    farthest = new double[floors.size()][];
    for (int f = 0; f < hoseCost.length; f++) {
      prepare(f, floors.get(f));
    }
  }

  private void prepare(int f, CoverFloor floor) {
    hoseCost[f] = new double[floor.hose().length][floor.cells()];
    farthest[f] = new double[floor.hose().length];
    for (int o = 0; o < floor.hose().length; o++) {
      for (int c = 0; c < floor.cells(); c++) {
        double hose = floor.hose()[o][c];
        boolean leads = Double.isFinite(hose);
        hoseCost[f][o][c] = leads ? floor.weight()[c] * hose : Double.POSITIVE_INFINITY;
        farthest[f][o] = leads ? Math.max(farthest[f][o], hose) : farthest[f][o];
      }
    }
  }

  /** The outlets that each option can have and may need, by option and floor. */
  int[][][] allOutlets() {
    return problem.options().stream().parallel().map(this::outlets).toArray(int[][][]::new);
  }

  private int[][] outlets(CoverOption option) {
    var outlets = new int[hoseCost.length][];
    for (int f = 0; f < outlets.length; f++) {
      outlets[f] = option.serves(f) ? OutletSieve.outlets(problem, option, f) : new int[0];
    }
    return outlets;
  }

  /**
   * What an option and its outlets are worth at some prices.
   *
   * @param option what opening it comes to
   * @param outlet by floor and place among the outlets: negative for those worth setting up, for
   *     the others by how much the floor's sum rises where they are
   */
  record Worth(double option, double[][] outlet) {}

  /**
   * The worth of an option with these outlets at these prices: what is set up and laid costs less
   * what its cells pay.
   */
  Worth worth(CoverOption option, int[][] outlets, double[][] price) {
    var worth = new double[outlets.length][];
    double sum = option.fixed();
    for (int f = 0; f < outlets.length; f++) {
      worth[f] = new double[outlets[f].length];
      if (worth[f].length > 0) {
        double[] left = left(option, f, price[f]);
        for (int k = 0; k < worth[f].length; k++) {
          int o = outlets[f][k];
          worth[f][k] = option.outletCost()[f][o] + paid(f, o, left, most(option, f));
        }
        double least = option.trunk().get(f).least(outlets[f], worth[f]);
        sum += problem.floors().get(f).times() * least;
      }
    }
    return new Worth(sum, worth);
  }

  /** Counts, for each cell, the outlets worth setting up that would serve it at these prices. */
  void count(
      CoverOption option,
      int[][] outlets,
      double[][] outletValues,
      double[][] price,
      int[][] served) {
    for (int f = 0; f < outlets.length; f++) {
      double[] left = left(option, f, price[f]);
      for (int k = 0; k < outlets[f].length; k++) {
        if (outletValues[f][k] < 0) {
          serve(option, f, outlets[f][k], left, served[f]);
        }
      }
    }
  }

  /** What each cell still pays for hose on the floor, after the hose up to there. */
  private double[] left(CoverOption option, int f, double[] price) {
    double before = option.before()[f];
    double[] weight = problem.floors().get(f).weight();
    double[] left = new double[price.length];
    for (int c = 0; c < left.length; c++) {
      left[c] = price[c] - weight[c] * before;
    }
    return left;
  }

  private double paid(int f, int o, double[] left, double most) {
    return farthest[f][o] <= most ? near(f, o, left) : within(f, o, left, most);
  }

  /** What cells pay for an outlet that reaches all of them. */
  private double near(int f, int o, double[] left) {
    double[] cost = hoseCost[f][o];
    double sum = 0;
    for (int c = 0; c < cost.length; c++) {
      double net = cost[c] - left[c];
      if (net < 0) {
        sum += net;
      }
    }
    return sum;
  }

  /** The same where some lie farther than hose may be long. */
  private double within(int f, int o, double[] left, double most) {
    double[] cost = hoseCost[f][o];
    double[] hose = problem.floors().get(f).hose()[o];
    double sum = 0;
    for (int c = 0; c < cost.length; c++) {
      double net = cost[c] - left[c];
      if (net < 0 && hose[c] <= most) {
        sum += net;
      }
    }
    return sum;
  }

  private void serve(CoverOption option, int f, int o, double[] left, int[] served) {
    double[] cost = hoseCost[f][o];
    double[] hose = problem.floors().get(f).hose()[o];
    double most = most(option, f);
    for (int c = 0; c < cost.length; c++) {
      if (cost[c] < left[c] && hose[c] <= most) {
        served[c]++;
      }
    }
  }

  /** The longest hose on the floor that the limit leaves. */
  private double most(CoverOption option, int f) {
    return problem.limit() + CoverProblem.NOISE - option.before()[f];
  }
}
