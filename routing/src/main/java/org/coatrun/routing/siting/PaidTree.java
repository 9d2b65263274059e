package org.coatrun.routing.siting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * All that is paid for once, however many cells use it, as a tree: options, behind them stretches
 * of pipe, behind these outlets, where the cells are. A part is used by cells of one range only.
 */
final class PaidTree {

  private final List<Part> parts = new ArrayList<>();
  private final List<double[]> serving = new ArrayList<>();
  private final List<Integer> outlets = new ArrayList<>();

  /**
   * One part.
   *
   * @param before the part that it goes on from, at a lower place; −1 at the root
   * @param cost what it costs once
   * @param from the first cell that may use it
   * @param to the cell after the last one that may use it
   */
  record Part(int before, double cost, int from, int to) {}

  /** Adds a part; hands back its place. */
  int add(Part part) {
    parts.add(part);
    return parts.size() - 1;
  }

  /** Adds an outlet as a part at the end of others, with what it costs to serve each cell. */
  void addOutlet(Part part, double[] serve) {
    outlets.add(add(part));
    serving.add(serve);
  }

  /**
   * Adds pipe and the outlets to which it leads; stretches that lead to none of them are left out.
   *
   * @param root the part where the pipe begins, or −1
   * @param outlets numbers of the trunk's outlets
   * @param fixed cost of each of them
   * @param serve what it costs each of them to serve each cell
   * @param times how often all is paid
   * @param from the first cell
   */
  void addPipe(
      int root, Trunk trunk, int[] outlets, double[] fixed, double[][] serve, int times, int from) {
    boolean[] leads = new boolean[trunk.stretches()];
    for (int o : outlets) {
      for (int n = trunk.last()[o]; n >= 0; n = trunk.before()[n]) {
        leads[n] = true;
      }
    }
    int to = from + (serve.length == 0 ? 0 : serve[0].length);
    int[] place = new int[leads.length];
    for (int n = 0; n < leads.length; n++) {
      int before = trunk.before()[n] < 0 ? root : place[trunk.before()[n]];
      place[n] = leads[n] ? add(new Part(before, times * trunk.cost()[n], from, to)) : -1;
    }
    for (int k = 0; k < outlets.length; k++) {
      int n = trunk.last()[outlets[k]];
      addOutlet(new Part(n < 0 ? root : place[n], times * fixed[k], from, to), serve[k]);
    }
  }

  int size() {
    return parts.size();
  }

  Part part(int n) {
    return parts.get(n);
  }

  int outlets() {
    return outlets.size();
  }

  /** The part that outlet i is. */
  int place(int i) {
    return outlets.get(i);
  }

  /** What it costs to serve each cell of its range from outlet i. */
  double[] serving(int i) {
    return serving.get(i);
  }

  int cells() {
    return parts.stream().mapToInt(Part::to).max().orElse(0);
  }

  /** For each part, the cells of its range that some outlet behind it can serve. */
  boolean[][] reach() {
    boolean[][] reach = new boolean[size()][];
    Arrays.setAll(reach, n -> new boolean[part(n).to - part(n).from]);
    for (int i = 0; i < outlets(); i++) {
      for (int c = 0; c < serving(i).length; c++) {
        reach[place(i)][c] = Double.isFinite(serving(i)[c]);
      }
    }
    for (int n = size() - 1; n >= 0; n--) {
      Part part = part(n);
      if (part.before >= 0) {
        int shift = part.from - part(part.before).from;
        for (int c = 0; c < reach[n].length; c++) {
          reach[part.before][c + shift] |= reach[n][c];
        }
      }
    }
    return reach;
  }
}
