package org.coatrun.geometry.solid;

import java.util.Arrays;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Intersects small convex polygons without an overlay: thirty times quicker for quads. */
final class ConvexClip {

  private static final int MOST = 12;

  /** Corners this near are one but for rounding: what is between them has no direction, m. */
  private static final double SHORT = 1e-10;

  private ConvexClip() {}

  /** The ring of a convex polygon of few corners, counter-clockwise, or null for anything else. */
  static double[] ring(Geometry g) {
    if (!(g instanceof Polygon p) || p.getNumInteriorRing() > 0) {
      return null;
    }
    int n = p.getExteriorRing().getNumPoints() - 1;
    if (n < 3 || n > MOST) {
      return null;
    }
    double[] ring = Rings.corners(p.getExteriorRing());
    return isRing(ring) ? ring : reversedIfConvex(ring);
  }

  /** Whether corners are those of a convex polygon of few, counter-clockwise. */
  static boolean isRing(double[] corners) {
    return corners.length >= 6 && corners.length <= 2 * MOST && convex(corners);
  }

  private static double[] reversedIfConvex(double[] ring) {
    double[] back = Rings.reversed(ring);
    return convex(back) ? back : null;
  }

  /** Whether a ring turns left at each corner, once round in all. */
  private static boolean convex(double[] r) {
    int n = r.length;
    int rises = 0;
    boolean straight = false;
    for (int i = 0; i < n; i += 2) {
      int j = i + 2 < n ? i + 2 : i + 2 - n;
      int k = i + 4 < n ? i + 4 : i + 4 - n;
      double av = r[j + 1] - r[i + 1];
      double bv = r[k + 1] - r[j + 1];
      double cross = (r[j] - r[i]) * bv - av * (r[k] - r[j]);
      if (cross < 0) {
        return false;
      }
      straight |= cross == 0;
      rises += av < 0 && bv >= 0 ? 1 : 0;
    }
    return straight ? turnsOnce(r) : rises == 1;
  }

  /** The same for a ring with straight corners, at which it may also turn back. */
  private static boolean turnsOnce(double[] r) {
    int n = r.length;
    double turned = 0;
    for (int i = 0; i < n; i += 2) {
      int j = (i + 2) % n;
      int k = (i + 4) % n;
      double au = r[j] - r[i];
      double av = r[j + 1] - r[i + 1];
      double bu = r[k] - r[j];
      double bv = r[k + 1] - r[j + 1];
      turned += Math.atan2(au * bv - av * bu, au * bu + av * bv);
    }
    return turned > 0 && turned < 7;
  }

  /** What both rings share, or null where that has no area. */
  static double[] common(double[] subject, double[] clip) {
    if (isHair(clip)) {
      return null;
    }
    double[] in = subject;
    int n = subject.length / 2;
    double[] a = new double[4 * n + 8];
    double[] b = new double[a.length];
    for (int e = 0; e < clip.length && n > 0; e += 2) {
      int f = (e + 2) % clip.length;
      if (isShort(clip, e, f)) {
        continue;
      }
      a = a.length < 4 * n ? new double[8 * n] : a;
      n = clipped(in, n, clip[e], clip[e + 1], clip[f], clip[f + 1], a);
      in = a;
      a = b;
      b = in;
    }
    if (n < 3) {
      return null;
    }
    double[] out = new double[2 * n];
    System.arraycopy(in, 0, out, 0, 2 * n);
    return out;
  }

  /** The area that a convex ring shares with any region, its holes taken off. */
  static double sharedArea(double[] convex, Polygon region) {
    double shared = Math.abs(sharedArea(convex, region.getExteriorRing()));
    for (int i = 0; i < region.getNumInteriorRing() && shared > 0; i++) {
      shared -= Math.abs(sharedArea(convex, region.getInteriorRingN(i)));
    }
    return shared;
  }

  /** Where a ring falls into parts, what is clipped runs along the edge between them: no area. */
  private static double sharedArea(double[] convex, LinearRing ring) {
    double[] shared = common(Rings.corners(ring), convex);
    return shared == null ? 0 : Rings.area(shared);
  }

  /** Whether a ring has less than three edges that are longer than rounding, so hardly any area. */
  static boolean isHair(double[] ring) {
    int edges = 0;
    for (int e = 0; e < ring.length && edges < 3; e += 2) {
      edges += isShort(ring, e, (e + 2) % ring.length) ? 0 : 1;
    }
    return edges < 3;
  }

  /** Whether two corners of a ring, given by the places of their u, are one but for rounding. */
  static boolean isShort(double[] ring, int from, int to) {
    double du = ring[to] - ring[from];
    double dv = ring[to + 1] - ring[from + 1];
    return du * du + dv * dv < SHORT * SHORT;
  }

  private static int clipped(
      double[] in, int n, double pu, double pv, double qu, double qv, double[] out) {
    double eu = qu - pu;
    double ev = qv - pv;
    int m = 0;
    double lu = in[2 * n - 2];
    double lv = in[2 * n - 1];
    double last = eu * (lv - pv) - ev * (lu - pu);
    for (int i = 0; i < n; i++) {
      double cu = in[2 * i];
      double cv = in[2 * i + 1];
      double here = eu * (cv - pv) - ev * (cu - pu);
      if ((last < 0 && here > 0) || (last > 0 && here < 0)) {
        double t = last / (last - here);
        out[2 * m] = lu + t * (cu - lu);
        out[2 * m++ + 1] = lv + t * (cv - lv);
      }
      if (here >= 0) {
        out[2 * m] = cu;
        out[2 * m++ + 1] = cv;
      }
      lu = cu;
      lv = cv;
      last = here;
    }
    return m;
  }

  /**
   * What is left of one ring where the other covers the rest, if that is one or two convex rings
   * lying apart: where one edge, or two that face away from each other, part them. Null where it is
   * anything else.
   */
  static double[][] less(double[] subject, double[] cover, double thin) {
    int first = -1;
    int second = -1;
    for (int e = 0; e < cover.length; e += 2) {
      if (!isShort(cover, e, (e + 2) % cover.length) && outside(subject, cover, e) > thin) {
        if (second >= 0) {
          return null;
        }
        second = first;
        first = e;
      }
    }
    if (first < 0) {
      return new double[0][];
    }
    double[] one = beyond(subject, cover, first);
    if (second < 0) {
      return one == null ? new double[0][] : new double[][] {one};
    }
    double[] two = beyond(subject, cover, second);
    if (one == null || two == null || beyond(one, cover, second) != null) {
      return null;
    }
    return new double[][] {one, two};
  }

  /** Whether no corner of the region lies outside the ring by more than a distance. */
  static boolean holds(double[] ring, Polygon region, double thin) {
    CoordinateSequence c = region.getExteriorRing().getCoordinateSequence();
    for (int e = 0; e < ring.length; e += 2) {
      int f = (e + 2) % ring.length;
      double eu = ring[f] - ring[e];
      double ev = ring[f + 1] - ring[e + 1];
      double limit = -thin * Math.sqrt(eu * eu + ev * ev);
      for (int i = 0; i < c.size(); i++) {
        if (eu * (c.getY(i) - ring[e + 1]) - ev * (c.getX(i) - ring[e]) < limit) {
          return false;
        }
      }
    }
    return true;
  }

  /** How far the ring reaches beyond an edge of the cover. */
  private static double outside(double[] ring, double[] cover, int e) {
    int f = (e + 2) % cover.length;
    double eu = cover[f] - cover[e];
    double ev = cover[f + 1] - cover[e + 1];
    double most = 0;
    for (int i = 0; i < ring.length; i += 2) {
      most = Math.max(most, ev * (ring[i] - cover[e]) - eu * (ring[i + 1] - cover[e + 1]));
    }
    return most / Math.sqrt(eu * eu + ev * ev);
  }

  /** What of a ring lies beyond an edge of the cover, or null where nothing does. */
  private static double[] beyond(double[] ring, double[] cover, int e) {
    int f = (e + 2) % cover.length;
    boolean left = false;
    boolean right = false;
    for (int i = 0; i < ring.length; i += 2) {
      double height =
          (cover[e] - cover[f]) * (ring[i + 1] - cover[f + 1])
              - (cover[e + 1] - cover[f + 1]) * (ring[i] - cover[f]);
      left |= height > 0;
      right |= height < 0;
    }
    if (!left || !right) {
      return left ? ring : null;
    }
    double[] out = new double[2 * ring.length + 4];
    int n = clipped(ring, ring.length / 2, cover[f], cover[f + 1], cover[e], cover[e + 1], out);
    return n < 3 ? null : Arrays.copyOf(out, 2 * n);
  }
}
