package org.coatrun.routing.siting;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** Good covers by opening, closing and swapping options as long as that saves something. */
final class Improver {

  private static final double SAME = 1e-9;

  private final Evaluator evaluator;

  Improver(Evaluator evaluator) {
    this.evaluator = evaluator;
  }

  /** The best cover met from {@code start} on, using only these options; empty without any. */
  Optional<Evaluator.Valued> improve(BitSet start, List<Integer> options) {
    if (options.isEmpty()) {
      return Optional.empty();
    }
    Evaluator.Valued best = evaluator.value(start, false);
    boolean better = true;
    while (better) {
      Evaluator.Valued next = bestNeighbour(best, options);
      better = next.objective() < best.objective() - SAME * Math.max(1, best.objective());
      best = better ? next : best;
    }
    return Optional.of(best);
  }

  private Evaluator.Valued bestNeighbour(Evaluator.Valued from, List<Integer> options) {
    var open = new BitSet();
    from.cover().options().forEach(open::set);
    Evaluator.Valued best = from;
    for (int add : options) {
      if (!open.get(add)) {
        best = tried(best, open, add, -1);
        for (int drop : from.cover().options()) {
          best = tried(best, open, add, drop);
        }
      }
    }
    for (int drop : from.cover().options()) {
      best = tried(best, open, -1, drop);
    }
    return best;
  }

  private Evaluator.Valued tried(Evaluator.Valued best, BitSet open, int add, int drop) {
    var changed = (BitSet) open.clone();
    if (add >= 0) {
      changed.set(add);
    }
    if (drop >= 0) {
      changed.clear(drop);
    }
    Evaluator.Valued value = evaluator.value(changed, false);
    return value.objective() < best.objective() ? value : best;
  }
}
