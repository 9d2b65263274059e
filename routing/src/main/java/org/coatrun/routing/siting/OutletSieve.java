package org.coatrun.routing.siting;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Leaves out the outlets that no best cover needs: whatever is set up behind a stretch of pipe can
 * be given up for an outlet of the same option that needs no pipe, where that lengthens the hose by
 * less than the pipe is worth. Exact: some best cover is always left.
 */
final class OutletSieve {

  private final CoverProblem problem;
  private final CoverOption option;
  private final int floor;
  private final Trunk trunk;
  private final double[] once;
  private final int cells;

  private OutletSieve(CoverProblem problem, CoverOption option, int floor) {
    this.problem = problem;
    this.option = option;
    this.floor = floor;
    trunk = option.trunk().get(floor);
    once = option.outletCost()[floor];
    cells = problem.floors().get(floor).cells();
  }

  /** The outlets of an option on a floor that it serves, ascending. */
  static int[] outlets(CoverProblem problem, CoverOption option, int floor) {
    var sieve = new OutletSieve(problem, option, floor);
    int[] all =
        IntStream.range(0, sieve.once.length).filter(o -> Double.isFinite(sieve.once[o])).toArray();
    return Arrays.stream(all)
        .filter(o -> sieve.trunk.last()[o] < 0)
        .boxed()
        .min((a, b) -> Double.compare(sieve.once[a], sieve.once[b]))
        .map(own -> sieve.kept(all, own))
        .orElse(all);
  }

  private int[] kept(int[] all, int own) {
    double[][] nearest = new double[trunk.stretches()][cells];
    double[] pipe = new double[trunk.stretches()];
    double[] set = new double[trunk.stretches()];
    for (double[] row : nearest) {
      Arrays.fill(row, Double.POSITIVE_INFINITY);
    }
    Arrays.fill(pipe, Double.POSITIVE_INFINITY);
    Arrays.fill(set, Double.POSITIVE_INFINITY);
    for (int o : all) {
      int n = trunk.last()[o];
      if (n >= 0) {
        pipe[n] = 0;
        set[n] = Math.min(set[n], once[o]);
        for (int c = 0; c < cells; c++) {
          nearest[n][c] = Math.min(nearest[n][c], problem.cost(option, floor, o, c));
        }
      }
    }
    boolean[] useless = new boolean[trunk.stretches()];
    for (int n = useless.length - 1; n >= 0; n--) {
      pipe[n] += trunk.cost()[n];
      useless[n] = once[own] <= set[n] && lost(own, nearest[n]) <= pipe[n];
      carry(n, nearest, pipe, set);
    }
    for (int n = 0; n < useless.length; n++) {
      useless[n] |= trunk.before()[n] >= 0 && useless[trunk.before()[n]];
    }
    return Arrays.stream(all)
        .filter(o -> trunk.last()[o] < 0 || !useless[trunk.last()[o]])
        .toArray();
  }

  private void carry(int n, double[][] nearest, double[] pipe, double[] set) {
    int to = trunk.before()[n];
    if (to >= 0) {
      pipe[to] = Math.min(pipe[to], pipe[n]);
      set[to] = Math.min(set[to], set[n]);
      for (int c = 0; c < cells; c++) {
        nearest[to][c] = Math.min(nearest[to][c], nearest[n][c]);
      }
    }
  }

  /** What cells lose at most that go over to the outlet; infinite where it does not reach one. */
  private double lost(int own, double[] nearest) {
    double sum = 0;
    for (int c = 0; c < cells; c++) {
      if (Double.isFinite(nearest[c])) {
        sum += Math.max(0, problem.cost(option, floor, own, c) - nearest[c]);
      }
    }
    return sum;
  }
}
