package org.coatrun.routing.siting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * Chooses machine spots, risers and outlets together: best-first branch and bound on the Lagrangian
 * bound. Exact; where the nodes ran out, the bound says how far from the best it may be.
 *
 * <p>One search serves one problem; it is deterministic, as it counts nodes and not time.
 */
public final class CoverSearch {

  private static final double SAME = 1e-9;
  private static final int ROOT_STEPS = 400;
  private static final int NODE_STEPS = 60;

  private final CoverProblem problem;
  private final Coverage coverage;
  private final Bounder bounder;
  private final Evaluator evaluator;
  private final Improver improver;
  private final int mostNodes;
  private final List<List<Integer>> byMachine;
  private final PriorityQueue<Node> queue = new PriorityQueue<>();
  private Evaluator.Valued best;
  private double unproven = Double.POSITIVE_INFINITY;
  private long made;

  private CoverSearch(CoverProblem problem, int mostNodes) {
    this.problem = problem;
    this.mostNodes = mostNodes;
    coverage = new Coverage(problem);
    byMachine = byMachine();
    bounder = new Bounder(problem, coverage);
    evaluator = new Evaluator(problem, mostNodes);
    improver = new Improver(evaluator);
    best = evaluator.value(new BitSet(), true); // to cover nothing is always open to us
  }

  /**
   * The best cover by at most {@code mostMachines} machine spots.
   *
   * @param mostNodes parts of the search that are looked at before it stops
   */
  public static CoverResult solve(CoverProblem problem, int mostMachines, int mostNodes) {
    if (problem.machineCost().length == 0 || problem.options().isEmpty()) {
      return new CoverResult(Optional.empty(), 0, 0, true);
    }
    return new CoverSearch(problem, mostNodes).run(mostMachines);
  }

  /** For each machine spot, what no cover from it alone counts for less than. */
  static double[] spotBounds(CoverProblem problem) {
    if (problem.options().isEmpty()) {
      return new double[problem.machineCost().length];
    }
    var search = new CoverSearch(problem, 1);
    List<List<Integer>> sets = SpotSets.upTo(1, problem.machineCost().length);
    List<Integer> first = search.firstSet(sets);
    Node root = search.improved(search.node(first, search.startPrices()), ROOT_STEPS);
    search.screen(sets, first, root);
    double[] bound = new double[problem.machineCost().length];
    search.queue.forEach(n -> bound[n.spots().get(0)] = n.bound());
    return bound;
  }

  private CoverResult run(int mostMachines) {
    List<List<Integer>> sets = SpotSets.upTo(mostMachines, problem.machineCost().length);
    List<Integer> first = firstSet(sets);
    double[][] price = startPrices();
    Node root = improved(node(first, price), ROOT_STEPS);
    screen(sets, first, root);
    int nodes = 1;
    while (!queue.isEmpty() && queue.peek().bound() < cutoff() && nodes < mostNodes) {
      nodes++;
      look(queue.poll());
    }
    double open = queue.isEmpty() ? Double.POSITIVE_INFINITY : queue.peek().bound();
    double bound = Math.min(Math.min(open, unproven), best.objective());
    boolean optimal = bound >= cutoff();
    double left = best.cover().uncovered() * problem.uncovered();
    return new CoverResult(
        Optional.of(best.cover()),
        optimal ? best.cover().cost() : Math.max(0, bound - left),
        nodes,
        optimal);
  }

  private double cutoff() {
    return best.objective() - SAME * Math.max(1, Math.abs(best.objective()));
  }

  /** The set that leaves least uncovered and, of those, looks cheapest by its fixed costs. */
  private List<Integer> firstSet(List<List<Integer>> sets) {
    return sets.stream()
        .min(
            Comparator.<List<Integer>>comparingInt(s -> coverage.uncovered(coverage.of(options(s))))
                .thenComparingDouble(this::roughCost))
        .orElseThrow();
  }

  private double roughCost(List<Integer> spots) {
    double machines = spots.stream().mapToDouble(m -> problem.machineCost()[m]).sum();
    return machines
        + options(spots).stream()
            .mapToDouble(j -> problem.options().get(j).fixed())
            .min()
            .orElse(0);
  }

  private List<Integer> options(List<Integer> spots) {
    return spots.stream().flatMap(m -> byMachine.get(m).stream()).sorted().toList();
  }

  /** The options of each machine; one that covers nothing has no place in any cover. */
  private List<List<Integer>> byMachine() {
    var lists = new ArrayList<List<Integer>>();
    for (int m = 0; m < problem.machineCost().length; m++) {
      lists.add(new ArrayList<>());
    }
    for (int j = 0; j < problem.options().size(); j++) {
      if (!coverage.of(j).isEmpty()) {
        lists.get(problem.options().get(j).machine()).add(j);
      }
    }
    return lists;
  }

  /** Prices to begin with: what the nearest way costs the cell. */
  private double[][] startPrices() {
    double[][] price = Relaxation.zeroPrices(problem);
    for (int f = 0; f < price.length; f++) {
      for (int c = 0; c < price[f].length; c++) {
        price[f][c] = nearest(f, c);
      }
    }
    return price;
  }

  private double nearest(int f, int c) {
    double least = Double.POSITIVE_INFINITY;
    for (CoverOption option : problem.options()) {
      for (int o = 0; option.serves(f) && o < option.outletCost()[f].length; o++) {
        if (Double.isFinite(option.outletCost()[f][o])) {
          least = Math.min(least, problem.cost(option, f, o, c));
        }
      }
    }
    return Double.isFinite(least) ? least : 0;
  }

  private Node node(List<Integer> spots, double[][] price) {
    List<Integer> options = options(spots);
    improver.improve(new BitSet(), options).ifPresent(this::offer);
    return new Node(spots, options, new BitSet(), Double.NEGATIVE_INFINITY, price, true, made++);
  }

  /** Bounds all other sets of spots with the prices of the first: most never come up again. */
  private void screen(List<List<Integer>> sets, List<Integer> first, Node root) {
    queue.add(root);
    var all = new ArrayList<Integer>();
    for (int j = 0; j < problem.options().size(); j++) {
      all.add(j);
    }
    double[] value = bounder.values(root.price(), all);
    for (List<Integer> spots : sets) {
      if (!spots.equals(first)) {
        List<Integer> options = options(spots);
        var node = new Node(spots, options, new BitSet(), 0, root.price(), true, made++);
        BitSet covered = coverage.of(options);
        int least = covered.isEmpty() ? 0 : 1;
        double bound = bounder.bound(node, root.price(), value, least, covered).bound();
        queue.add(new Node(spots, options, new BitSet(), bound, root.price(), true, node.order()));
      }
    }
  }

  private void look(Node node) {
    if (node.fresh()) {
      improver.improve(new BitSet(), node.free()).ifPresent(this::offer);
      queue.add(improved(node, ROOT_STEPS));
    } else if (node.free().isEmpty()) {
      leaf(node);
    } else {
      branch(node);
    }
  }

  private void leaf(Node node) {
    Evaluator.Valued exact = evaluator.value(node.open(), true);
    offer(exact);
    if (exact.bound() < exact.objective() - SAME * Math.max(1, exact.objective())) {
      unproven = Math.min(unproven, Math.max(node.bound(), exact.bound()));
    }
  }

  private void branch(Node node) {
    double[] value = bounder.values(node.price(), node.free());
    int on =
        node.free().stream().min(Comparator.comparingDouble(j -> Math.abs(value[j]))).orElseThrow();
    var rest = new ArrayList<>(node.free());
    rest.remove(Integer.valueOf(on));
    var open = (BitSet) node.open().clone();
    open.set(on);
    push(new Node(node.spots(), rest, open, node.bound(), node.price(), false, made++));
    push(new Node(node.spots(), rest, node.open(), node.bound(), node.price(), false, made++));
  }

  private void push(Node node) {
    Node better = improved(node, NODE_STEPS);
    if (better.bound() < cutoff()) {
      queue.add(better);
    }
  }

  /** The node with better prices, its bound, and without options that the bound decides. */
  private Node improved(Node node, int steps) {
    var within = new ArrayList<>(node.free());
    node.open().stream().forEach(within::add);
    BitSet covered = coverage.of(within);
    int least = coverage.fewest(within);
    Bounder.Priced priced = bounder.improve(node, least, covered, best.objective(), steps);
    offerRelaxed(priced.bound());
    return decided(node, priced);
  }

  private void offerRelaxed(Bounder.Bound bound) {
    var open = new BitSet();
    bound.chosen().forEach(open::set);
    offer(evaluator.value(open, false));
  }

  /** Fixes free options whose other choice the bound rules out. */
  private Node decided(Node node, Bounder.Priced priced) {
    double[] value = priced.bound().value();
    List<Integer> chosen = priced.bound().chosen();
    double room = cutoff() - priced.bound().bound();
    // Opening another option may spare the dearest of those opened only to have enough of them.
    double spared = chosen.stream().mapToDouble(j -> Math.max(0, value[j])).max().orElse(0);
    var free = new ArrayList<Integer>();
    var open = (BitSet) node.open().clone();
    for (int j : node.free()) {
      if (value[j] < 0 && -value[j] >= room) {
        open.set(j);
      } else if (value[j] < 0 || chosen.contains(j) || value[j] - spared < room) {
        free.add(j);
      }
    }
    double bound = Math.max(node.bound(), priced.bound().bound());
    return new Node(node.spots(), free, open, bound, priced.price(), false, node.order());
  }

  private void offer(Evaluator.Valued found) {
    if (found.objective() < best.objective() - SAME) {
      best = found;
    }
  }
}
