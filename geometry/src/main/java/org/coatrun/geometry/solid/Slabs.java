package org.coatrun.geometry.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * Takes any region, concave or with holes, away from a convex ring. The ring is cut into slabs at
 * each corner of what the two share; no corner lies within a slab, so that what is left of it lies
 * in the gaps between edges that cross it whole.
 */
final class Slabs {

  private final double[] convex;

  /** Edges of what is shared: from u, from v, to u, to v. */
  private final List<double[]> edges = new ArrayList<>();

  private Slabs(double[] convex) {
    this.convex = convex;
  }

  /** What is left, as convex rings side by side; some may have hardly any area. */
  static List<double[]> less(double[] convex, Polygon region) {
    Slabs slabs = new Slabs(convex);
    slabs.share(region.getExteriorRing());
    for (int i = 0; i < region.getNumInteriorRing(); i++) {
      slabs.share(region.getInteriorRingN(i));
    }
    double[] u = slabs.corners(0);
    double[] v = slabs.corners(1);
    return u.length < v.length ? slabs.rest(0, u) : slabs.rest(1, v);
  }

  private void share(LinearRing ring) {
    double[] shared = ConvexClip.common(Rings.corners(ring), convex);
    for (int i = 0; shared != null && i < shared.length; i += 2) {
      int j = (i + 2) % shared.length;
      edges.add(new double[] {shared[i], shared[i + 1], shared[j], shared[j + 1]});
    }
  }

  /** Where corners lie along an axis, in order, each place once. */
  private double[] corners(int axis) {
    return edges.stream().mapToDouble(e -> e[axis]).sorted().distinct().toArray();
  }

  private List<double[]> rest(int axis, double[] places) {
    List<double[]> out = new ArrayList<>();
    double[] left = convex;
    double before = Double.NEGATIVE_INFINITY;
    for (double place : places) {
      double[] slab = ConvexClip.before(left, axis, place);
      if (slab != null) {
        gaps(slab, crossing(axis, before, place), out);
      }
      left = ConvexClip.behind(left, axis, place);
      if (left == null) {
        return out;
      }
      before = place;
    }
    out.add(left);
    return out;
  }

  private static void gaps(double[] slab, List<double[]> crossing, List<double[]> out) {
    double[] left = slab;
    boolean outside = true;
    for (double[] e : crossing) {
      if (outside) {
        double[] gap = ConvexClip.leftOf(left, e[0], e[1], e[2], e[3]);
        if (gap != null) {
          out.add(gap);
        }
      }
      left = ConvexClip.leftOf(left, e[2], e[3], e[0], e[1]);
      if (left == null) {
        return;
      }
      outside = !outside;
    }
    out.add(left);
  }

  /**
   * The edges that run from one side of a slab to the other, in order along it, each turned so that
   * what comes before it lies to its left.
   */
  private List<double[]> crossing(int axis, double from, double to) {
    List<double[]> out = new ArrayList<>();
    for (double[] e : edges) {
      if (Math.min(e[axis], e[axis + 2]) <= from && Math.max(e[axis], e[axis + 2]) >= to) {
        boolean rises = e[axis] < e[axis + 2];
        out.add(rises == (axis == 1) ? e : new double[] {e[2], e[3], e[0], e[1]});
      }
    }
    double middle = 0.5 * (from + to);
    out.sort(Comparator.comparingDouble(e -> across(e, axis, middle)));
    return out;
  }

  private static double across(double[] e, int axis, double place) {
    double part = (place - e[axis]) / (e[axis + 2] - e[axis]);
    return e[1 - axis] + part * (e[3 - axis] - e[1 - axis]);
  }
}
