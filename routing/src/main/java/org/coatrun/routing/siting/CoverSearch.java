package org.coatrun.routing.siting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/**
 * Chooses machine spots, risers and outlets together: best-first branch and bound on the Lagrangian
 * bound. Exact; where the nodes ran out, the bound says how far from the best it may be.
 *
 * <p>One search serves one problem; it is deterministic, as it counts nodes and not time.
 */
public final class CoverSearch {

  private static final int ROOT_STEPS = 400;
  private static final int NODE_STEPS = 60;

  private final CoverProblem problem;
  private final Coverage coverage;
  private final SpotOptions options;
  private final Bounder bounder;
  private final Evaluator evaluator;
  private final Improver improver;
  private final Incumbent incumbent;
  private final Tightener tightener;
  private final int mostNodes;
  private final PriorityQueue<Node> queue = new PriorityQueue<>();
  private double unproven = Double.POSITIVE_INFINITY;
  private long made;

  private CoverSearch(CoverProblem problem, int mostNodes) {
    this.problem = problem;
    this.mostNodes = mostNodes;
    coverage = new Coverage(problem);
    options = new SpotOptions(problem, coverage);
    bounder = new Bounder(problem, coverage);
    evaluator = new Evaluator(problem, mostNodes);
    improver = new Improver(evaluator);
    incumbent = new Incumbent(evaluator.value(new BitSet(), true)); // nothing is open to us always
    tightener = new Tightener(coverage, bounder, evaluator, incumbent);
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
    double[] bound = new double[problem.machineCost().length];
    if (!problem.options().isEmpty()) {
      var search = new CoverSearch(problem, 1);
      search.begin(1);
      search.queue.forEach(n -> bound[n.spots().get(0)] = n.bound());
    }
    return bound;
  }

  private CoverResult run(int mostMachines) {
    begin(mostMachines);
    int nodes = 1;
    while (!queue.isEmpty() && queue.peek().bound() < incumbent.cutoff() && nodes < mostNodes) {
      nodes++;
      look(queue.poll());
    }
    return result(nodes);
  }

  private CoverResult result(int nodes) {
    Evaluator.Valued best = incumbent.best();
    double open = queue.isEmpty() ? Double.POSITIVE_INFINITY : queue.peek().bound();
    double bound = Math.min(Math.min(open, unproven), best.objective());
    boolean optimal = bound >= incumbent.cutoff();
    double left = best.cover().uncovered() * problem.uncovered();
    double cost = optimal ? best.cover().cost() : Math.max(0, bound - left);
    return new CoverResult(Optional.of(best.cover()), cost, nodes, optimal);
  }

  /**
   * Puts all sets of spots into the queue: the most promising with prices of its own, the others
   * bounded with these; most of them never come up again.
   */
  private void begin(int mostMachines) {
    List<List<Integer>> sets = SpotSets.upTo(mostMachines, problem.machineCost().length);
    List<Integer> first = options.mostPromising(sets);
    List<Integer> own = options.of(first);
    improver.improve(new BitSet(), own).ifPresent(incumbent::offer);
    double none = Double.NEGATIVE_INFINITY;
    Node root =
        tightener.tightened(
            new Node(first, own, new BitSet(), none, StartPrices.of(problem), true, made++),
            ROOT_STEPS);
    queue.add(root);
    double[] value =
        bounder.values(root.price(), IntStream.range(0, problem.options().size()).boxed().toList());
    sets.stream().filter(s -> !s.equals(first)).forEach(s -> queue.add(screened(s, root, value)));
  }

  private Node screened(List<Integer> spots, Node root, double[] value) {
    List<Integer> own = options.of(spots);
    var node = new Node(spots, own, new BitSet(), 0, root.price(), true, made++);
    BitSet covered = coverage.of(own);
    int least = covered.isEmpty() ? 0 : 1;
    double bound = bounder.bound(node, root.price(), value, least, covered).bound();
    return new Node(spots, own, new BitSet(), bound, root.price(), true, node.order());
  }

  private void look(Node node) {
    if (node.fresh()) {
      improver.improve(new BitSet(), node.free()).ifPresent(incumbent::offer);
      queue.add(tightener.tightened(node, ROOT_STEPS));
    } else if (node.free().isEmpty()) {
      leaf(node);
    } else {
      branch(node);
    }
  }

  private void leaf(Node node) {
    Evaluator.Valued exact = evaluator.value(node.open(), true);
    incumbent.offer(exact);
    if (exact.bound() < exact.objective() - Incumbent.noise(exact.objective())) {
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
    Node better = tightener.tightened(node, NODE_STEPS);
    if (better.bound() < incumbent.cutoff()) {
      queue.add(better);
    }
  }
}
