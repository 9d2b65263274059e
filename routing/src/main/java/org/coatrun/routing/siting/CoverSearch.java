package org.coatrun.routing.siting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Chooses machine spots, risers and outlets together: best-first branch and bound on the Lagrangian
 * bound. Exact; where the nodes ran out, the bound says how far from the best it may be.
 *
 * <p>One search serves one problem; it is deterministic, as it counts nodes and not time.
 */
public final class CoverSearch {

  private static final int ROOT_STEPS = 150;
  private static final int NODE_STEPS = 20;

  private final SearchBasis basis;
  private final CoverProblem problem;
  private final Coverage coverage;
  private final SpotOptions options;
  private final Bounder bounder;
  private final int[][][] outlets;
  private final Evaluator evaluator;
  private final Incumbent incumbent;
  private final Tightener tightener;
  private final Budget budget;
  private final PriorityQueue<Node> queue = new PriorityQueue<>();
  private double unproven = Double.POSITIVE_INFINITY;
  private long made;

  private CoverSearch(SearchBasis basis, double worth, int mostNodes) {
    this.basis = basis;
    budget = new Budget(mostNodes);
    problem = basis.problem();
    options = basis.options();
    bounder = basis.bounder();
    coverage = basis.coverage();
    outlets = basis.outlets();
    evaluator = new Evaluator(basis, outlets);
    // Nothing is open to us always.
    incumbent = new Incumbent(evaluator.value(new BitSet()), worth);
    tightener = new Tightener(problem, coverage, bounder, evaluator, incumbent);
  }

  /**
   * The best cover by at most {@code mostMachines} machine spots.
   *
   * @param mostNodes parts of the search that are looked at before it stops
   */
  public static CoverResult solve(CoverProblem problem, int mostMachines, int mostNodes) {
    if (problem.machineCost().length == 0 || problem.options().isEmpty()) {
      return new CoverResult(Optional.empty(), 0, 0, true, Relaxation.zeroPrices(problem));
    }
    var search = new CoverSearch(SearchBasis.of(problem), Double.POSITIVE_INFINITY, mostNodes);
    search.begin(mostMachines);
    return search.run();
  }

  /**
   * The best cover from one machine spot, if it counts for less than {@code worth}; else some cover
   * and a bound that is no less than that.
   *
   * @param price to begin with
   */
  static CoverResult from(
      int spot, SearchBasis basis, double[][] price, double worth, int mostNodes) {
    var search = new CoverSearch(basis, worth, mostNodes);
    Node begin = search.begin(List.of(spot), price);
    search.tightener.tightened(begin, 0); // for the cover that it offers
    search.queue.add(search.refined(begin));
    return search.run();
  }

  /** What these prices say at once of one machine spot: some cover from it, and a bound. */
  static Evaluator.Valued roughly(int spot, SearchBasis basis, double[][] price) {
    var search = new CoverSearch(basis, Double.POSITIVE_INFINITY, 1);
    Node bounded = search.tightener.tightened(search.begin(List.of(spot), price), 0);
    Evaluator.Valued best = search.incumbent.best();
    return new Evaluator.Valued(best.cover(), best.objective(), bounded.bound());
  }

  private CoverResult run() {
    budget.spend(1);
    double[][] price = queue.peek().price();
    while (!queue.isEmpty() && queue.peek().bound() < incumbent.cutoff() && !budget.isSpent()) {
      budget.spend(1);
      look(queue.poll());
    }
    return result(price);
  }

  private CoverResult result(double[][] price) {
    Evaluator.Valued best = incumbent.best();
    double open = queue.isEmpty() ? Double.POSITIVE_INFINITY : queue.peek().bound();
    double bound = Math.min(Math.min(open, unproven), incumbent.cutoff());
    boolean optimal = bound >= best.objective() - 2 * Incumbent.noise(best.objective());
    double left = best.cover().uncovered() * basis.penalty();
    double cost = optimal ? best.cover().cost() : Math.max(0, bound - left);
    return new CoverResult(Optional.of(best.cover()), cost, budget.spent(), optimal, price);
  }

  /**
   * Puts all sets of spots into the queue: the most promising with prices of its own, the others
   * bounded with these; most of them never come up again.
   */
  private void begin(int mostMachines) {
    List<List<Integer>> sets = SpotSets.upTo(mostMachines, problem.machineCost().length);
    List<Integer> first = options.mostPromising(sets);
    new Improver(evaluator).grow(options.of(first)).ifPresent(incumbent::offer);
    Node root = refined(begin(first, StartPrices.of(problem, options.of(first))));
    List<Integer> all = IntStream.range(0, problem.options().size()).boxed().toList();
    Bounder.Values value = bounder.values(root.price(), outlets, all);
    sets.stream().filter(s -> !s.equals(first)).forEach(s -> queue.add(screened(s, root, value)));
    queue.add(root);
  }

  private Node begin(List<Integer> spots, double[][] price) {
    double none = Double.NEGATIVE_INFINITY;
    return new Node(spots, options.of(spots), new BitSet(), outlets, none, price, true, made++);
  }

  private Node screened(List<Integer> spots, Node root, Bounder.Values value) {
    Node node = begin(spots, root.price());
    BitSet covered = coverage.of(node.free());
    int least = covered.isEmpty() ? 0 : 1;
    double bound = bounder.bound(node, root.price(), value, least, covered).bound();
    return new Node(
        spots, node.free(), node.open(), outlets, bound, root.price(), true, node.order());
  }

  private void look(Node node) {
    if (node.fresh()) {
      queue.add(refined(node));
    } else if (node.free().isEmpty()) {
      leaf(node);
    } else {
      branch(node);
    }
  }

  /** Good prices first; where these leave hope, a good cover of what they leave undecided. */
  private Node refined(Node fresh) {
    Node shared = SharedBound.bounded(problem, basis.penalty(), fresh, incumbent.cutoff());
    if (shared.bound() >= incumbent.cutoff()) {
      return shared;
    }
    Node better = tightener.tightened(shared, ROOT_STEPS);
    if (better.bound() < incumbent.cutoff()) {
      List<Integer> left = better.undropped();
      ToDoubleFunction<BitSet> least = bounder.least(better, coverage.of(left));
      // Of these, only the outlets left are of any use to a better cover.
      new Improver(new Evaluator(basis, better.outlets()))
          .improve(left, open -> least.applyAsDouble(open) < incumbent.cutoff())
          .ifPresent(incumbent::offer);
      better = tightener.tightened(better, NODE_STEPS);
    }
    return better;
  }

  private void leaf(Node node) {
    Evaluator.Valued exact =
        new Evaluator(basis, node.outlets()).exact(node.open(), incumbent.cutoff(), budget);
    incumbent.offer(exact);
    unproven = Math.min(unproven, Math.max(node.bound(), exact.bound()));
  }

  private void branch(Node node) {
    double[] value = bounder.values(node.price(), node.outlets(), node.free()).option();
    int on =
        node.free().stream().min(Comparator.comparingDouble(j -> Math.abs(value[j]))).orElseThrow();
    var rest = new ArrayList<>(node.free());
    rest.remove(Integer.valueOf(on));
    var open = (BitSet) node.open().clone();
    open.set(on);
    push(child(node, rest, open));
    push(child(node, rest, node.open()));
  }

  private Node child(Node of, List<Integer> free, BitSet open) {
    return new Node(of.spots(), free, open, of.outlets(), of.bound(), of.price(), false, made++);
  }

  private void push(Node node) {
    Node better = tightener.tightened(node, NODE_STEPS);
    if (better.bound() < incumbent.cutoff()) {
      queue.add(better);
    }
  }
}
