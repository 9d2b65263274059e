package org.coatrun.geometry.solid;

import java.util.Arrays;

/** Gives end points of segments that lie within a distance of each other one node number. */
final class Welds {

  // an odd direction, so that points in a row along an axis do not all get the same key
  private static final double KEY_U = 0.8253356149096783;
  private static final double KEY_V = 0.5646424733950354;

  int[] node = new int[256];
  double[] u = new double[128];
  double[] v = new double[128];
  int nodes;
  private double[] key = new double[256];
  private int[] order = new int[256];

  /** Node of point 2i is the start of segment i, of 2i + 1 its end. */
  void weld(Segments s, double distance) {
    int n = 2 * s.size;
    grow(n);
    for (int i = 0; i < n; i++) {
      key[i] = KEY_U * pu(s, i) + KEY_V * pv(s, i);
      order[i] = i;
      node[i] = -1;
    }
    sort(n);
    nodes = 0;
    for (int i = 0; i < n; i++) {
      int p = order[i];
      if (node[p] < 0) {
        gather(s, i, n, distance);
      }
    }
  }

  private void gather(Segments s, int i, int n, double distance) {
    int p = order[i];
    double pu = pu(s, p);
    double pv = pv(s, p);
    int id = nodes++;
    u[id] = pu;
    v[id] = pv;
    node[p] = id;
    for (int j = i + 1; j < n && key[order[j]] - key[p] <= 1.5 * distance; j++) {
      int q = order[j];
      if (node[q] < 0
          && Math.abs(pu(s, q) - pu) <= distance
          && Math.abs(pv(s, q) - pv) <= distance) {
        node[q] = id;
      }
    }
  }

  private static double pu(Segments s, int p) {
    return (p & 1) == 0 ? s.from[p] : s.to[p - 1];
  }

  private static double pv(Segments s, int p) {
    return (p & 1) == 0 ? s.from[p + 1] : s.to[p];
  }

  private void grow(int n) {
    if (n > node.length) {
      node = new int[2 * n];
      key = new double[2 * n];
      order = new int[2 * n];
    }
    if (n > u.length) {
      u = new double[2 * n];
      v = new double[2 * n];
    }
  }

  /** Shell sort: no boxing, no second table, and the tables are short. */
  private void sort(int n) {
    if (n > 4096) {
      sortLong(n);
      return;
    }
    for (int gap = n / 2; gap > 0; gap = gap == 2 ? 1 : (int) (gap / 2.2)) {
      for (int i = gap; i < n; i++) {
        int p = order[i];
        int j = i;
        while (j >= gap && after(order[j - gap], p)) {
          order[j] = order[j - gap];
          j -= gap;
        }
        order[j] = p;
      }
    }
  }

  private boolean after(int a, int b) {
    return key[a] > key[b] || (key[a] == key[b] && a > b);
  }

  private void sortLong(int n) {
    Integer[] boxed = new Integer[n];
    Arrays.setAll(boxed, i -> i);
    Arrays.sort(
        boxed, (a, b) -> key[a] != key[b] ? Double.compare(key[a], key[b]) : Integer.compare(a, b));
    for (int i = 0; i < n; i++) {
      order[i] = boxed[i];
    }
  }
}
