package org.coatrun.routing.siting;

import java.util.BitSet;
import java.util.List;

/** Gives parts of a search better prices and bounds, and decides options that the bound decides. */
final class Tightener {

  private final Coverage coverage;
  private final Bounder bounder;
  private final Evaluator evaluator;
  private final Incumbent incumbent;
  private final Decider decider;

  Tightener(
      CoverProblem problem,
      Coverage coverage,
      Bounder bounder,
      Evaluator evaluator,
      Incumbent incumbent) {
    this.coverage = coverage;
    this.bounder = bounder;
    this.evaluator = evaluator;
    this.incumbent = incumbent;
    this.decider = new Decider(problem);
  }

  /** The same part after so many steps; where it leaves hope, what it opens is offered. */
  Node tightened(Node node, int steps) {
    List<Integer> within = node.undropped();
    BitSet covered = coverage.of(within);
    int least = coverage.fewest(within);
    Bounder.Priced priced = bounder.improve(node, least, covered, incumbent.cutoff(), steps);
    if (priced.bound().bound() < incumbent.cutoff()) {
      var open = new BitSet();
      priced.bound().chosen().forEach(open::set);
      incumbent.offer(evaluator.value(open));
    }
    return decider.decided(
        priced.part(), priced.bound(), priced.part().price(), incumbent.cutoff());
  }
}
