package org.coatrun.routing.siting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/** The Lagrangian bound of a part of the search, and the prices that make it good. */
final class Bounder {

  private static final int STALLS = 12;
  private static final double LEAST_STEP = 1e-3;

  private final CoverProblem problem;
  private final Coverage coverage;
  private final Relaxation relaxation;
  private final double penalty;

  Bounder(CoverProblem problem, Coverage coverage) {
    this.problem = problem;
    this.coverage = coverage;
    this.relaxation = new Relaxation(problem);
    this.penalty = problem.uncovered();
  }

  /**
   * What a set of prices says about a part.
   *
   * @param bound no cover counts for less
   * @param value of each option of the part, by option index; others stay zero
   * @param chosen what the relaxed problem opens
   */
  record Bound(double bound, double[] value, List<Integer> chosen) {}

  /** The values of all options at these prices. */
  double[] values(double[][] price, Iterable<Integer> options) {
    double[] value = new double[problem.options().size()];
    for (int j : options) {
      value[j] = relaxation.value(problem.options().get(j), price);
    }
    return value;
  }

  /**
   * The bound of a part from the values of its options.
   *
   * @param least at least so many options are needed
   * @param covered cells that the part can cover
   */
  Bound bound(Node node, double[][] price, double[] value, int least, BitSet covered) {
    double sum = node.spots().stream().mapToDouble(m -> problem.machineCost()[m]).sum();
    sum += paid(price, covered);
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
    return new Bound(sum, value, chosen);
  }

  /**
   * Better prices by subgradient steps (B. T. Polyak), the step halved after twelve that bring
   * nothing; hands back the best bound met and its prices.
   */
  Priced improve(Node node, int least, BitSet covered, double target, int steps) {
    double[][] price = copy(node.price());
    double[][] bestPrice = node.price();
    Bound best = null;
    double alpha = 1;
    int stall = 0;
    var options = new ArrayList<>(node.free());
    node.open().stream().forEach(options::add);
    for (int step = 0; step <= steps && alpha > LEAST_STEP; step++) {
      Bound now = bound(node, price, values(price, options), least, covered);
      if (best == null || now.bound > best.bound + 1e-9 * Math.abs(best.bound)) {
        best = now;
        bestPrice = copy(price);
        stall = 0;
      } else if (++stall >= STALLS) {
        alpha /= 2;
        stall = 0;
      }
      if (best.bound >= target || !move(price, now, covered, alpha, target)) {
        break;
      }
    }
    return new Priced(best, bestPrice);
  }

  /** A bound and the prices it was found at. */
  record Priced(Bound bound, double[][] price) {}

  private boolean move(double[][] price, Bound now, BitSet covered, double alpha, double target) {
    int[][] served = new int[price.length][];
    for (int f = 0; f < price.length; f++) {
      served[f] = new int[price[f].length];
    }
    now.chosen.forEach(j -> relaxation.count(problem.options().get(j), price, served));
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
