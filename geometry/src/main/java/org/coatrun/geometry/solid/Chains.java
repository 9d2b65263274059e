package org.coatrun.geometry.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Joins directed segments to rings with the inside on their left: counter-clockwise rings are
 * shells, clockwise ones holes.
 *
 * <p>End points are welded, pieces without length dropped, a piece and its opposite cancel; at a
 * branch the sharpest left turn is taken, and where a node repeats the ring is split off. Reused
 * scratch tables: one object per thread.
 */
final class Chains {

  private final Welds welds = new Welds();
  private int[] start = new int[64];
  private int[] end = new int[64];
  private int[] next = new int[64];
  private boolean[] used = new boolean[64];
  private int[] head = new int[64];
  private int[] balance = new int[64];
  private int[] seat = new int[64];
  private int[] path = new int[65];
  private final List<double[]> rings = new ArrayList<>();
  private int segments;

  /**
   * The rings (u, v in turn, no repeated last point), or null where some chain does not close.
   *
   * @param thin rings thinner than this on average are nothing
   */
  List<double[]> rings(Segments s, double weld, double thin) {
    welds.weld(s, weld);
    rings.clear();
    link(s);
    if (!balanced()) {
      return null;
    }
    for (int i = 0; i < segments; i++) {
      if (!used[i]) {
        trace(i, thin);
      }
    }
    return rings;
  }

  private void link(Segments s) {
    grow(s.size);
    segments = 0;
    Arrays.fill(head, 0, welds.nodes, -1);
    Arrays.fill(balance, 0, welds.nodes, 0);
    for (int i = 0; i < s.size; i++) {
      int a = welds.node[2 * i];
      int b = welds.node[2 * i + 1];
      if (a != b && !cancels(a, b)) {
        int k = segments++;
        start[k] = a;
        end[k] = b;
        used[k] = false;
        next[k] = head[a];
        head[a] = k;
        balance[a]++;
        balance[b]--;
      }
    }
  }

  private boolean cancels(int a, int b) {
    int before = -1;
    for (int k = head[b]; k >= 0; before = k, k = next[k]) {
      if (end[k] == a) {
        if (before < 0) {
          head[b] = next[k];
        } else {
          next[before] = next[k];
        }
        used[k] = true;
        balance[b]--;
        balance[a]++;
        return true;
      }
    }
    return false;
  }

  private boolean balanced() {
    for (int i = 0; i < welds.nodes; i++) {
      if (balance[i] != 0) {
        return false;
      }
    }
    return true;
  }

  private void trace(int first, double thin) {
    Arrays.fill(seat, 0, welds.nodes, -1);
    int n = 0;
    int k = first;
    path[0] = start[first];
    seat[path[0]] = 0;
    while (k >= 0) {
      used[k] = true;
      int at = end[k];
      if (seat[at] >= 0) {
        close(seat[at], n, thin);
        for (int i = seat[at] + 1; i <= n; i++) {
          seat[path[i]] = -1;
        }
        n = seat[at];
      } else {
        path[++n] = at;
        seat[at] = n;
      }
      k = onward(k, at);
    }
  }

  private int onward(int from, int at) {
    int only = -1;
    int count = 0;
    for (int k = head[at]; k >= 0; k = next[k]) {
      if (!used[k]) {
        only = k;
        count++;
      }
    }
    return count < 2 ? only : leftmost(from, at);
  }

  private int leftmost(int from, int at) {
    double du = welds.u[at] - welds.u[start[from]];
    double dv = welds.v[at] - welds.v[start[from]];
    int best = -1;
    double most = Double.NEGATIVE_INFINITY;
    for (int k = head[at]; k >= 0; k = next[k]) {
      if (!used[k]) {
        double eu = welds.u[end[k]] - welds.u[at];
        double ev = welds.v[end[k]] - welds.v[at];
        double turn = Math.atan2(du * ev - dv * eu, du * eu + dv * ev);
        if (turn > most || (turn == most && k < best)) {
          most = turn;
          best = k;
        }
      }
    }
    return best;
  }

  private void close(int from, int to, double thin) {
    int n = to - from + 1;
    if (n < 3) {
      return;
    }
    double[] ring = new double[2 * n];
    for (int i = 0; i < n; i++) {
      ring[2 * i] = welds.u[path[from + i]];
      ring[2 * i + 1] = welds.v[path[from + i]];
    }
    if (Math.abs(Rings.area(ring)) > 0.5 * thin * Rings.length(ring)) {
      rings.add(ring);
    }
  }

  private void grow(int n) {
    if (n > start.length) {
      start = new int[2 * n];
      end = new int[2 * n];
      next = new int[2 * n];
      used = new boolean[2 * n];
    }
    if (welds.nodes > head.length || welds.nodes + 1 > path.length) {
      head = new int[2 * welds.nodes];
      balance = new int[2 * welds.nodes];
      seat = new int[2 * welds.nodes];
      path = new int[2 * welds.nodes + 1];
    }
  }
}
