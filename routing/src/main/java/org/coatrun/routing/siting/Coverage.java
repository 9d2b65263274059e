package org.coatrun.routing.siting;

import java.util.BitSet;
import java.util.Collection;
import java.util.List;

/** Which cells each option can cover at all; cells are numbered over all floors. */
final class Coverage {

  /** Looking at all triples of more options than this takes too long for what it gives. */
  private static final int FEW = 30;

  private final CoverProblem problem;
  private final int[] start;
  private final BitSet[] byOption;

  Coverage(CoverProblem problem) {
    this.problem = problem;
    List<CoverFloor> floors = problem.floors();
    start = new int[floors.size() + 1];
    for (int f = 0; f < floors.size(); f++) {
      start[f + 1] = start[f] + floors.get(f).cells();
    }
    byOption = problem.options().stream().map(this::coveredBy).toArray(BitSet[]::new);
  }

  private BitSet coveredBy(CoverOption option) {
    var set = new BitSet(start[start.length - 1]);
    for (int f = 0; f < problem.floors().size(); f++) {
      for (int c = 0; c < problem.floors().get(f).cells(); c++) {
        set.set(start[f] + c, problem.covers(option, f, c));
      }
    }
    return set;
  }

  BitSet of(int option) {
    return byOption[option];
  }

  BitSet of(Collection<Integer> options) {
    var all = new BitSet();
    options.forEach(j -> all.or(byOption[j]));
    return all;
  }

  int index(int floor, int cell) {
    return start[floor] + cell;
  }

  int floorOf(int index) {
    int f = 0;
    while (start[f + 1] <= index) {
      f++;
    }
    return f;
  }

  /** How many cells stay uncovered, alike floors counted each. */
  int uncovered(BitSet covered) {
    int n = 0;
    for (int f = 0; f < problem.floors().size(); f++) {
      for (int i = start[f]; i < start[f + 1]; i++) {
        n += covered.get(i) ? 0 : problem.floors().get(f).times();
      }
    }
    return n;
  }

  /** At least how many of the options are needed to cover what all of them cover: up to 4. */
  int fewest(List<Integer> options) {
    BitSet all = of(options);
    if (all.isEmpty()) {
      return 0;
    }
    for (int size = 1; size <= (options.size() <= FEW ? 3 : 2); size++) {
      if (some(options, 0, size, new BitSet(), all)) {
        return size;
      }
    }
    return options.size() <= FEW ? 4 : 3;
  }

  private boolean some(List<Integer> options, int from, int left, BitSet so, BitSet all) {
    if (left == 0) {
      return so.cardinality() == all.cardinality();
    }
    for (int i = from; i < options.size(); i++) {
      BitSet own = byOption[options.get(i)];
      if (left == 1 && own.cardinality() + so.cardinality() < all.cardinality()) {
        continue;
      }
      var more = (BitSet) so.clone();
      more.or(byOption[options.get(i)]);
      if (some(options, i + 1, left - 1, more, all)) {
        return true;
      }
    }
    return false;
  }
}
