package org.coatrun.routing.siting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Gives parts of a search better prices and bounds, and decides options that the bound decides. */
final class Tightener {

  private final Coverage coverage;
  private final Bounder bounder;
  private final Evaluator evaluator;
  private final Incumbent incumbent;

  Tightener(Coverage coverage, Bounder bounder, Evaluator evaluator, Incumbent incumbent) {
    this.coverage = coverage;
    this.bounder = bounder;
    this.evaluator = evaluator;
    this.incumbent = incumbent;
  }

  /** The same part after so many steps; what the relaxed problem opens is offered as a cover. */
  Node tightened(Node node, int steps) {
    var within = new ArrayList<>(node.free());
    node.open().stream().forEach(within::add);
    BitSet covered = coverage.of(within);
    int least = coverage.fewest(within);
    Bounder.Priced priced =
        bounder.improve(node, least, covered, incumbent.best().objective(), steps);
    var open = new BitSet();
    priced.bound().chosen().forEach(open::set);
    incumbent.offer(evaluator.value(open, false));
    return decided(node, priced);
  }

  /** Fixes free options whose other choice the bound rules out. */
  private Node decided(Node node, Bounder.Priced priced) {
    double[] value = priced.bound().value();
    List<Integer> chosen = priced.bound().chosen();
    double room = incumbent.cutoff() - priced.bound().bound();
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
}
