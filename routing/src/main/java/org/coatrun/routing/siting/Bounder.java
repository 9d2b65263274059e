package org.coatrun.routing.siting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The Lagrangian bound of a part of the search, and the prices that make it good. */
final class Bounder {

  private static final int STALLS = 12;
  private static final double LEAST_STEP = 1e-3;

  private final CoverProblem problem;
  private final Coverage coverage;
  private final Relaxation relaxation;
  private final Decider decider;
  private final double penalty;

  Bounder(CoverProblem problem, Coverage coverage) {
    this.problem = problem;
    this.coverage = coverage;
    this.relaxation = new Relaxation(problem);
    this.decider = new Decider(problem);
    this.penalty = problem.uncovered();
  }

  /**
   * What a set of prices says about a part.
   *
   * @param bound no cover counts for less
   * @param values of the options of the part
   * @param chosen what the relaxed problem opens
   */
  record Bound(double bound, Values values, List<Integer> chosen) {}

  /**
   * What options and their outlets are worth at some prices.
   *
   * @param option by option; zero for those not asked for
   * @param outlet by option, floor and place among the outlets; null for those not asked for
   * @param outlets by option and floor, the outlets looked at, ascending
   */
  record Values(double[] option, double[][][] outlet, int[][][] outlets) {}

  /** The outlets that each option can have, by option and floor. */
  int[][][] allOutlets() {
    return relaxation.allOutlets();
  }

  /** The values of these options, with these outlets, at these prices. */
  Values values(double[][] price, int[][][] outlets, Iterable<Integer> options) {
    var values = new Values(new double[outlets.length], new double[outlets.length][][], outlets);
    for (int j : options) {
      CoverOption option = problem.options().get(j);
      Relaxation.Worth worth = relaxation.worth(option, outlets[j], price);
      values.outlet[j] = worth.outlet();
      values.option[j] = worth.option();
    }
    return values;
  }

  /**
   * The bound of a part from the values of its options.
   *
   * @param least at least so many options are needed
   * @param covered cells that the part can cover
   */
  Bound bound(Node node, double[][] price, Values values, int least, BitSet covered) {
    double[] value = values.option;
    double sum = machines(node) + paid(price, covered);
    var chosen = new ArrayList<Integer>();
    node.open().stream().forEach(chosen::add);
    var rest = new ArrayList<Integer>();
    for (int j : node.free()) {
      (value[j] < 0 ? chosen : rest).add(j);
    }
    rest.sort(Comparator.<Integer>comparingDouble(j -> value[j]).thenComparingInt(j -> j));
    for (int i = 0; chosen.size() < least && i < rest.size(); i++) {
      chosen.add(rest.get(i));
    }
    for (int j : chosen) {
      sum += value[j];
    }
    return new Bound(sum, values, chosen);
  }

  /** For sets of options of a part, what no cover by all of a set counts for less than. */
  ToDoubleFunction<BitSet> least(Node node, BitSet covered) {
    double[] value = values(node.price(), node.outlets(), node.undropped()).option;
    double sum = machines(node) + paid(node.price(), covered);
    return open -> sum + open.stream().mapToDouble(j -> value[j]).sum();
  }

  /**
   * Better prices by subgradient steps (B. T. Polyak), the step halved after twelve that bring
   * nothing; hands back the best bound met and the part as decided on the way, with its prices.
   *
   * @param cutoff what counts for no less than this is of no interest
   */
  Priced improve(Node node, int least, BitSet covered, double cutoff, int steps) {
    double[][] price = copy(node.price());
    Node part = node;
    Bound best = null;
    double alpha = 1;
    int stall = 0;
    for (int step = 0; step <= steps && alpha > LEAST_STEP; step++) {
      int[][][] outlets = part.outlets();
      Values values = values(price, outlets, part.undropped());
      Bound now = bound(part, price, values, least, covered);
      if (best == null || now.bound > best.bound + 1e-9 * Math.abs(best.bound)) {
        best = now;
        part = decider.decided(part, now, copy(price), cutoff);
        stall = 0;
      } else if (++stall >= STALLS) {
        alpha /= 2;
        stall = 0;
      }
      if (best.bound >= cutoff || !move(price, outlets, now, covered, alpha, cutoff)) {
        break;
      }
    }
    return new Priced(best, part);
  }

  /** A bound and the part that it bounds, at the prices it was found at. */
  record Priced(Bound bound, Node part) {}

  private boolean move(
      double[][] price, int[][][] outlets, Bound now, BitSet covered, double alpha, double target) {
    int[][] served = new int[price.length][];
    for (int f = 0; f < price.length; f++) {
      served[f] = new int[price[f].length];
    }
    for (int j : now.chosen) {
      relaxation.count(problem.options().get(j), outlets[j], now.values.outlet[j], price, served);
    }
    double square = 0;
    for (int f = 0; f < price.length; f++) {
      for (int c = 0; c < price[f].length; c++) {
        if (covered.get(coverage.index(f, c))) {
          square += problem.floors().get(f).times() * (1.0 - served[f][c]) * (1 - served[f][c]);
        }
      }
    }
    if (square == 0) {
      return false;
    }
    double length = alpha * Math.max(1e-6 * Math.abs(target), target - now.bound) / square;
    for (int f = 0; f < price.length; f++) {
      for (int c = 0; c < price[f].length; c++) {
        price[f][c] = Math.max(0, price[f][c] + length * (1 - served[f][c]));
      }
    }
    return true;
  }

  private double machines(Node node) {
    return node.spots().stream().mapToDouble(m -> problem.machineCost()[m]).sum();
  }

  private double paid(double[][] price, BitSet covered) {
    double sum = 0;
    for (int f = 0; f < price.length; f++) {
      double floor = 0;
      for (int c = 0; c < price[f].length; c++) {
        floor += covered.get(coverage.index(f, c)) ? price[f][c] : penalty;
      }
      sum += problem.floors().get(f).times() * floor;
    }
    return sum;
  }

  private static double[][] copy(double[][] price) {
    double[][] same = new double[price.length][];
    for (int f = 0; f < price.length; f++) {
      same[f] = price[f].clone();
    }
    return same;
  }
}
