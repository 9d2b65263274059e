package org.coatrun.routing.siting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Decides what the bound of a part of the search decides: at any prices, what an option or an
 * outlet is worth says how far the bound rises where it is forced the other way.
 */
final class Decider {

  private final CoverProblem problem;

  Decider(CoverProblem problem) {
    this.problem = problem;
  }

  /**
   * The part at these prices, without the options and outlets whose use the bound rules out, and
   * with those open that it cannot do without.
   *
   * @param cutoff covers that count for no less than this are of no interest
   */
  Node decided(Node node, Bounder.Bound at, double[][] price, double cutoff) {
    double[] value = at.values().option();
    List<Integer> chosen = at.chosen();
    double room = cutoff - at.bound();
    // Opening another option may spare the dearest of those opened only to have enough of them.
    double spared =
        chosen.stream().filter(j -> !node.open().get(j)).mapToDouble(j -> value[j]).max().orElse(0);
    var free = new ArrayList<Integer>();
    var open = (BitSet) node.open().clone();
    int[][][] outlets = node.outlets().clone();
    for (int j : node.undropped()) {
      boolean relaxed = value[j] < 0 || chosen.contains(j);
      double forced = relaxed ? 0 : value[j] - Math.max(0, spared);
      if (!node.open().get(j) && value[j] < 0 && -value[j] >= room) {
        open.set(j);
      } else if (!node.open().get(j) && forced < room) {
        free.add(j);
      }
      outlets[j] = left(outlets[j], at.values(), j, room - Math.max(0, forced));
    }
    double bound = Math.max(node.bound(), at.bound());
    return new Node(node.spots(), free, open, outlets, bound, price, false, node.order());
  }

  /** The outlets that may be set up at less than the room, on all floors that are alike. */
  private int[][] left(int[][] outlets, Bounder.Values values, int j, double room) {
    var left = new int[outlets.length][];
    for (int f = 0; f < left.length; f++) {
      int[] all = outlets[f];
      double[] worth = values.outlet()[j][f];
      // The values may be of a part from which fewer outlets were ruled out.
      int[] valued = values.outlets()[j][f];
      int times = problem.floors().get(f).times();
      left[f] = new int[all.length];
      int n = 0;
      for (int k = 0; k < all.length; k++) {
        double own = worth[Arrays.binarySearch(valued, all[k])];
        if (times * own < room || own <= 0) {
          left[f][n++] = all[k];
        }
      }
      left[f] = n == all.length ? all : Arrays.copyOf(left[f], n);
    }
    return left;
  }
}
