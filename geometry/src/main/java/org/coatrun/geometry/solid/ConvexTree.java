package org.coatrun.geometry.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * A region as its convex hull less its pockets and holes, each of which is such a tree again: an I
 * is a box less two pockets, a tube a box less one. What a convex ring shares with it, and what it
 * leaves of one, are then convex rings side by side; some may have hardly any area.
 *
 * <p>Convex differences tree: Batchelor, Hierarchical shape description based upon convex hulls of
 * concavities, Journal of Cybernetics 10 (1980).
 */
final class ConvexTree {

  /** For regions with more corners an overlay, or cutting ears, is cheaper. */
  private static final int MOST_CORNERS = 32;

  /** Pockets whose area is nought but for this, m², may be turned the wrong way round. */
  private static final double ROUNDING = 1e-12;

  private final double[] hull;
  private final ConvexCover cover;
  private final Extent2 box;
  private final List<ConvexTree> pockets;

  private ConvexTree(double[] hull, List<ConvexTree> pockets) {
    this.hull = hull;
    this.cover = ConvexCover.of(hull);
    this.box = Extent2.of(hull);
    this.pockets = pockets;
  }

  /**
   * The tree of a region; empty where it has too many corners for one to be worth its while, or
   * crosses itself.
   */
  static Optional<ConvexTree> of(Polygon region) {
    if (region.getNumPoints() > MOST_CORNERS) {
      return Optional.empty();
    }
    ConvexTree tree = of(turned(region.getExteriorRing()));
    for (int i = 0; i < region.getNumInteriorRing() && tree != null; i++) {
      ConvexTree hole = of(turned(region.getInteriorRingN(i)));
      if (hole == null) {
        return Optional.empty();
      }
      tree.pockets.add(hole);
    }
    return Optional.ofNullable(tree);
  }

  /** All of the region, as convex rings side by side. */
  List<double[]> parts() {
    List<double[]> parts = new ArrayList<>();
    lessPockets(hull, parts);
    return parts;
  }

  /** What of a convex ring lies outside. */
  void less(double[] convex, List<double[]> out) {
    List<double[]> beyond = new ArrayList<>();
    if (box.isApart(Extent2.of(convex), 0) || cover.cut(convex, 0, beyond) == null) {
      out.add(convex);
      return;
    }
    out.addAll(beyond);
    for (ConvexTree pocket : pockets) {
      pocket.common(convex, out);
    }
  }

  /** What of a convex ring lies within. */
  void common(double[] convex, List<double[]> out) {
    double[] shared = box.isApart(Extent2.of(convex), 0) ? null : ConvexClip.common(convex, hull);
    if (shared != null) {
      lessPockets(shared, out);
    }
  }

  private void lessPockets(double[] convex, List<double[]> out) {
    List<double[]> left = List.of(convex);
    for (ConvexTree pocket : pockets) {
      List<double[]> next = new ArrayList<>();
      for (double[] piece : left) {
        pocket.less(piece, next);
      }
      left = next;
    }
    out.addAll(left);
  }

  /** The corners of a ring, counter-clockwise. */
  private static double[] turned(LinearRing ring) {
    double[] r = Rings.corners(ring);
    return Rings.area(r) < 0 ? Rings.reversed(r) : r;
  }

  /** Null where the ring crosses itself. */
  private static ConvexTree of(double[] ring) {
    int[] on = hull(ring);
    if (!turnsOnce(on)) {
      return null;
    }
    double[] hull = new double[2 * on.length];
    List<ConvexTree> pockets = new ArrayList<>();
    for (int i = 0; i < on.length; i++) {
      hull[2 * i] = ring[2 * on[i]];
      hull[2 * i + 1] = ring[2 * on[i] + 1];
      double[] between = between(ring, on[i], on[(i + 1) % on.length]);
      double area = between.length > 4 ? Rings.area(between) : 0;
      if (area > 0) {
        ConvexTree pocket = of(between);
        if (pocket == null) {
          return null;
        }
        pockets.add(pocket);
      } else if (area < -ROUNDING) {
        return null;
      }
    }
    return new ConvexTree(hull, pockets);
  }

  /** Whether corners on the hull come in the ring's order: those of a sound ring do. */
  private static boolean turnsOnce(int[] on) {
    int falls = 0;
    for (int i = 0; i < on.length; i++) {
      falls += on[(i + 1) % on.length] < on[i] ? 1 : 0;
    }
    return on.length > 2 && falls == 1;
  }

  /** The corners from one on the hull to the next, the other way round. */
  private static double[] between(double[] ring, int from, int to) {
    int n = ring.length / 2;
    int count = (to - from + n) % n + 1;
    double[] out = new double[2 * count];
    for (int k = 0; k < count; k++) {
      int i = (to - k + n) % n;
      out[2 * k] = ring[2 * i];
      out[2 * k + 1] = ring[2 * i + 1];
    }
    return out;
  }

  /** Which corners of a ring are on its hull, counter-clockwise (Andrew 1979). */
  private static int[] hull(double[] r) {
    int[] sorted = sorted(r);
    int[] on = new int[sorted.length + 1];
    int n = 0;
    for (int i : sorted) {
      n = pushed(r, on, n, 0, i);
    }
    int low = n - 1;
    for (int i = sorted.length - 2; i >= 0; i--) {
      n = pushed(r, on, n, low, sorted[i]);
    }
    return Arrays.copyOf(on, Math.max(1, n - 1));
  }

  /** The corners by u, then v; there are few. */
  private static int[] sorted(double[] r) {
    int[] out = new int[r.length / 2];
    for (int i = 1; i < out.length; i++) {
      int at = i;
      for (; at > 0 && isBefore(r, i, out[at - 1]); at--) {
        out[at] = out[at - 1];
      }
      out[at] = i;
    }
    return out;
  }

  private static boolean isBefore(double[] r, int a, int b) {
    return r[2 * a] < r[2 * b] || (r[2 * a] == r[2 * b] && r[2 * a + 1] < r[2 * b + 1]);
  }

  private static int pushed(double[] r, int[] on, int count, int low, int next) {
    int n = count;
    while (n - low >= 2 && turn(r, on[n - 2], on[n - 1], next) <= 0) {
      n--;
    }
    on[n] = next;
    return n + 1;
  }

  private static double turn(double[] r, int a, int b, int c) {
    return (r[2 * b] - r[2 * a]) * (r[2 * c + 1] - r[2 * a + 1])
        - (r[2 * b + 1] - r[2 * a + 1]) * (r[2 * c] - r[2 * a]);
  }
}
