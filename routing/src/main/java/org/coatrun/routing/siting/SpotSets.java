package org.coatrun.routing.siting;

import java.util.ArrayList;
import java.util.List;

/** The sets of machine spots that a search looks at. */
final class SpotSets {

  /** Above so many sets a search would take too long. */
  private static final int MOST = 250_000;

  private SpotSets() {}

  /**
   * All sets of one spot, then of two, and so on.
   *
   * @throws IllegalArgumentException where there are more than a quarter of a million
   */
  static List<List<Integer>> upTo(int size, int spots) {
    var sets = new ArrayList<List<Integer>>();
    List<List<Integer>> last = List.of(List.of());
    for (int n = 1; n <= Math.min(size, spots); n++) {
      last = larger(last, spots);
      sets.addAll(last);
      if (sets.size() > MOST) {
        throw new IllegalArgumentException(
            spots + " machine spots are too many to look at all sets of " + n);
      }
    }
    return sets;
  }

  private static List<List<Integer>> larger(List<List<Integer>> sets, int spots) {
    var larger = new ArrayList<List<Integer>>();
    for (List<Integer> set : sets) {
      int from = set.isEmpty() ? 0 : set.get(set.size() - 1) + 1;
      for (int m = from; m < spots; m++) {
        var more = new ArrayList<>(set);
        more.add(m);
        larger.add(List.copyOf(more));
      }
    }
    return larger;
  }
}
