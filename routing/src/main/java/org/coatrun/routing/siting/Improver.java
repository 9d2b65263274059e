package org.coatrun.routing.siting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/** Good covers by opening, closing and swapping options as long as that saves something. */
final class Improver {

  private static final double SAME = 1e-9;

  private final Evaluator evaluator;

  Improver(Evaluator evaluator) {
    this.evaluator = evaluator;
  }

  /** A cover by opening one of these options after the other; empty without any. */
  Optional<Evaluator.Valued> grow(List<Integer> options) {
    return from(options, best -> larger(best, options), open -> true);
  }

  /**
   * The best cover met by opening, closing and swapping these options; empty without any.
   *
   * @param hopeful whether covers by a set of options are worth looking at
   */
  Optional<Evaluator.Valued> improve(List<Integer> options, Predicate<BitSet> hopeful) {
    return from(options, best -> neighbours(best, options), hopeful);
  }

  private Optional<Evaluator.Valued> from(
      List<Integer> options,
      Function<Evaluator.Valued, List<BitSet>> next,
      Predicate<BitSet> hopeful) {
    if (options.isEmpty()) {
      return Optional.empty();
    }
    Evaluator.Valued best = evaluator.value(new BitSet());
    boolean better = true;
    while (better) {
      double before = best.objective();
      for (BitSet open : next.apply(best)) {
        best = hopeful.test(open) ? cheaper(best, open) : best;
      }
      better = best.objective() < before - SAME * Math.max(1, before);
    }
    return Optional.of(best);
  }

  private Evaluator.Valued cheaper(Evaluator.Valued best, BitSet open) {
    Evaluator.Valued value = evaluator.value(open);
    return value.objective() < best.objective() ? value : best;
  }

  private static List<BitSet> larger(Evaluator.Valued from, List<Integer> options) {
    return options.stream()
        .filter(add -> !from.cover().options().contains(add))
        .map(add -> changed(from, add, -1))
        .toList();
  }

  private static List<BitSet> neighbours(Evaluator.Valued from, List<Integer> options) {
    var all = new ArrayList<>(larger(from, options));
    for (int drop : from.cover().options()) {
      all.add(changed(from, -1, drop));
      options.stream()
          .filter(add -> !from.cover().options().contains(add))
          .forEach(add -> all.add(changed(from, add, drop)));
    }
    return all;
  }

  private static BitSet changed(Evaluator.Valued from, int add, int drop) {
    var open = new BitSet();
    from.cover().options().forEach(open::set);
    if (add >= 0) {
      open.set(add);
    }
    if (drop >= 0) {
      open.clear(drop);
    }
    return open;
  }
}
