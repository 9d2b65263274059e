package org.coatrun.routing.siting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The bound of a part of the search by {@link CostShares}: nearer than the Lagrangian bound, in
 * which a cell may pay for a stretch of pipe once for each outlet behind it, but longer in coming;
 * hence for parts of few options only.
 */
final class SharedBound {

  private static final int STEPS = 300;

  /** Pairs of a cell and something it may pay for; with more of them it takes too long. */
  private static final long MOST = 700_000;

  private final CoverProblem problem;
  private final double penalty;
  private final Node node;
  private final PaidTree tree = new PaidTree();
  private final List<int[]> roots = new ArrayList<>();
  private final List<int[]> outlets = new ArrayList<>();
  private double once;

  private SharedBound(CoverProblem problem, double penalty, Node node) {
    this.problem = problem;
    this.penalty = penalty;
    this.node = node;
  }

  /** The same part with a better bound, without what that rules out; the same where it is large. */
  static Node bounded(CoverProblem problem, double penalty, Node node, double cutoff) {
    return size(problem, node) > MOST
        ? node
        : new SharedBound(problem, penalty, node).bounded(cutoff);
  }

  private static long size(CoverProblem problem, Node node) {
    long sum = 0;
    for (int j : node.undropped()) {
      for (int f = 0; f < problem.floors().size(); f++) {
        int outlets = node.outlets()[j][f].length;
        int parts =
            outlets == 0 ? 0 : outlets + problem.options().get(j).trunk().get(f).stretches();
        sum += (long) parts * problem.floors().get(f).cells();
      }
    }
    return sum;
  }

  private Node bounded(double cutoff) {
    once = node.spots().stream().mapToDouble(m -> problem.machineCost()[m]).sum();
    once += node.open().stream().mapToDouble(j -> problem.options().get(j).fixed()).sum();
    plant();
    if (tree.outlets() == 0) {
      return node;
    }
    var shares = new CostShares(tree);
    shares.raise(cutoff - once, STEPS);
    shares.exclude(cutoff - once);
    return without(shares);
  }

  /** Options at the root, and behind them the floors that they serve. */
  private void plant() {
    int[][] cells = new int[problem.floors().size()][];
    int all = 0;
    for (int f = 0; f < cells.length; f++) {
      cells[f] = served(f);
      all += cells[f].length;
      once +=
          penalty
              * problem.floors().get(f).times()
              * (problem.floors().get(f).cells() - cells[f].length);
    }
    for (int j : node.undropped()) {
      double cost = node.open().get(j) ? 0 : problem.options().get(j).fixed();
      int root = tree.add(new PaidTree.Part(-1, cost, 0, all));
      roots.add(new int[] {j, root});
      int from = 0;
      for (int f = 0; f < cells.length; f++) {
        if (cells[f].length > 0 && node.outlets()[j][f].length > 0) {
          plant(j, f, root, cells[f], from);
        }
        from += cells[f].length;
      }
    }
  }

  private void plant(int j, int f, int root, int[] cells, int from) {
    CoverOption option = problem.options().get(j);
    int times = problem.floors().get(f).times();
    int[] own = node.outlets()[j][f];
    double[] fixed = Arrays.stream(own).mapToDouble(o -> option.outletCost()[f][o]).toArray();
    double[][] serve = new double[own.length][cells.length];
    for (int k = 0; k < own.length; k++) {
      for (int c = 0; c < cells.length; c++) {
        serve[k][c] = times * problem.cost(option, f, own[k], cells[c]);
      }
      outlets.add(new int[] {j, f, own[k]});
    }
    tree.addPipe(root, option.trunk().get(f), own, fixed, serve, times, from);
  }

  /** The cells of a floor that some outlet of the part can serve. */
  private int[] served(int f) {
    var cells = new BitSet();
    for (int j : node.undropped()) {
      CoverOption option = problem.options().get(j);
      for (int o : node.outlets()[j][f]) {
        IntStream.range(0, problem.floors().get(f).cells())
            .filter(c -> Double.isFinite(problem.cost(option, f, o, c)))
            .forEach(cells::set);
      }
    }
    return cells.stream().toArray();
  }

  private Node without(CostShares shares) {
    var out = new BitSet();
    roots.stream().filter(r -> shares.isOut(r[1])).forEach(r -> out.set(r[0]));
    List<Integer> free = node.free().stream().filter(j -> !out.get(j)).toList();
    int[][][] left = node.outlets().clone();
    for (int i = outlets.size() - 1; i >= 0; i--) {
      if (shares.isOut(tree.place(i))) {
        remove(left, node.outlets(), outlets.get(i));
      }
    }
    double bound = Math.max(node.bound(), once + shares.bound());
    return new Node(
        node.spots(), free, node.open(), left, bound, node.price(), node.fresh(), node.order());
  }

  private static void remove(int[][][] from, int[][][] shared, int[] outlet) {
    int j = outlet[0];
    int f = outlet[1];
    from[j] = from[j] == shared[j] ? from[j].clone() : from[j];
    from[j][f] = Arrays.stream(from[j][f]).filter(o -> o != outlet[2]).toArray();
  }
}
