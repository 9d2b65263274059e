package org.coatrun.routing.siting;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;

/**
 * Pipe over a floor, from where it begins to the outlets, as a tree of stretches: a stretch that
 * several outlets lie behind is laid once for all of them.
 *
 * @param before for each stretch, the one that it goes on from, at a lower place; −1 at the start
 * @param cost for each stretch, what laying it costs; zero or more
 * @param last for each outlet, the last stretch of its pipe; −1 where it takes none
 */
public record Trunk(int[] before, double[] cost, int[] last) {

  public Trunk {
    for (int n = 0; n < before.length; n++) {
      if (before[n] >= n || !(cost[n] >= 0)) {
        throw new IllegalArgumentException("stretch " + n + " goes on from " + before[n]);
      }
    }
  }

  /** No pipe to any of so many outlets. */
  public static Trunk none(int outlets) {
    int[] last = new int[outlets];
    Arrays.fill(last, -1);
    return new Trunk(new int[0], new double[0], last);
  }

  /**
   * Several trunks as one, its outlets those of the places.
   *
   * @param of for each place, the number of its trunk and its outlet there
   */
  static Trunk joined(List<Trunk> trunks, List<int[]> of) {
    int[] from = new int[trunks.size() + 1];
    for (int t = 0; t < trunks.size(); t++) {
      from[t + 1] = from[t] + trunks.get(t).stretches();
    }
    int[] before = new int[from[trunks.size()]];
    double[] cost = new double[before.length];
    for (int t = 0; t < trunks.size(); t++) {
      Trunk trunk = trunks.get(t);
      for (int n = 0; n < trunk.stretches(); n++) {
        before[from[t] + n] = trunk.before[n] < 0 ? -1 : from[t] + trunk.before[n];
        cost[from[t] + n] = trunk.cost[n];
      }
    }
    int[] last = new int[of.size()];
    for (int i = 0; i < last.length; i++) {
      int own = trunks.get(of.get(i)[0]).last[of.get(i)[1]];
      last[i] = own < 0 ? -1 : from[of.get(i)[0]] + own;
    }
    return new Trunk(before, cost, last);
  }

  int stretches() {
    return before.length;
  }

  /** What pipe to these outlets costs, each stretch once. */
  double cost(Collection<Integer> outlets) {
    boolean[] laid = new boolean[before.length];
    double sum = 0;
    for (int o : outlets) {
      for (int n = last[o]; n >= 0 && !laid[n]; n = before[n]) {
        laid[n] = true;
        sum += cost[n];
      }
    }
    return sum;
  }

  /** The dearest pipe to a single outlet. */
  double dearest() {
    double[] all = new double[before.length];
    double most = 0;
    for (int n = 0; n < all.length; n++) {
      all[n] = cost[n] + (before[n] < 0 ? 0 : all[before[n]]);
      most = Math.max(most, all[n]);
    }
    return most;
  }

  /**
   * The least that any set of these outlets comes to with the pipe to it, by one pass up the tree.
   *
   * @param outlets those that can be had
   * @param worth in: what setting up each of them comes to without pipe. Out: negative for those of
   *     the least set, for the others by how much the sum rises where they are set up
   */
  double least(int[] outlets, double[] worth) {
    double[] with = cost.clone();
    double sum = 0;
    for (int k = 0; k < outlets.length; k++) {
      int n = last[outlets[k]];
      double own = Math.min(0, worth[k]);
      if (n < 0) {
        sum += own;
      } else {
        with[n] += own;
      }
    }
    for (int n = with.length - 1; n >= 0; n--) {
      double pays = Math.min(0, with[n]);
      if (before[n] < 0) {
        sum += pays;
      } else {
        with[before[n]] += pays;
      }
    }
    rises(outlets, with, worth);
    return sum;
  }

  /** A stretch costs what it is short of, and what those before it are. */
  private void rises(int[] outlets, double[] with, double[] worth) {
    double[] rise = with;
    for (int n = 0; n < rise.length; n++) {
      rise[n] = Math.max(0, with[n]) + (before[n] < 0 ? 0 : rise[before[n]]);
    }
    for (int k = 0; k < outlets.length; k++) {
      int n = last[outlets[k]];
      double lacking = n < 0 ? 0 : rise[n];
      worth[k] = lacking > 0 ? lacking + Math.max(0, worth[k]) : worth[k];
    }
  }
}
