package org.coatrun.geometry.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coatrun.shared.shape.Vec3;
import org.locationtech.jts.geom.Polygon;

/**
 * A convex region of a plane as the lines that bound it: what of a convex ring lies within, and
 * what it leaves of one, take a cut along each line that crosses the ring. Not for use by several
 * threads.
 */
final class ConvexCover {

  /** Faces this near to square to the plane's normal do not cross it: sine of the angle. */
  private static final double PARALLEL = 1e-9;

  /** A line that all points lie beyond. */
  private static final double[] ALL_BEYOND = {0, 0, 1};

  /** Three numbers a line: {@code a u + b v + c} is how far a point lies beyond it, m. */
  private final double[] lines;

  /** Beyond this line the ring lay that was cut last in vain: mostly the next one does, too. */
  private int apart;

  private ConvexCover(double[] lines) {
    this.lines = lines;
  }

  /** Within a convex ring, counter-clockwise. */
  static ConvexCover of(double[] ring) {
    if (ConvexClip.isHair(ring)) {
      return new ConvexCover(ALL_BEYOND);
    }
    double[] lines = new double[ring.length / 2 * 3];
    for (int i = 0; i < ring.length; i += 2) {
      int j = i + 2 < ring.length ? i + 2 : 0;
      if (!ConvexClip.isShort(ring, i, j)) { // else noughts, which no point lies beyond
        double eu = ring[j] - ring[i];
        double ev = ring[j + 1] - ring[i + 1];
        double length = Math.sqrt(eu * eu + ev * ev);
        int k = i / 2 * 3;
        lines[k] = ev / length;
        lines[k + 1] = -eu / length;
        lines[k + 2] = -lines[k] * ring[i] - lines[k + 1] * ring[i + 1];
      }
    }
    return new ConvexCover(lines);
  }

  /**
   * What a convex solid that is moved fills just in front of a plane, in the plane's axes; null
   * where it does not cross there.
   *
   * @param tolerance what is not higher above the plane lies in it, m
   */
  static ConvexCover of(Solid convex, Plane plane, Vec3 moved, double tolerance) {
    if (!crosses(convex.xyz, plane, tolerance - plane.along(moved))) {
      return null;
    }
    double[] lines = new double[3 * convex.faces.length];
    int k = 0;
    for (Face face : convex.faces) {
      Plane f = face.plane();
      double a = f.nx() * plane.ux() + f.ny() * plane.uy() + f.nz() * plane.uz();
      double b = f.nx() * plane.vx() + f.ny() * plane.vy() + f.nz() * plane.vz();
      double length = Math.sqrt(a * a + b * b);
      if (length > PARALLEL) {
        lines[k++] = a / length;
        lines[k++] = b / length;
        lines[k++] = (f.dot(plane) * plane.offset() - f.offset() - f.along(moved)) / length;
      }
    }
    return new ConvexCover(k == lines.length ? lines : Arrays.copyOf(lines, k));
  }

  /** Whether some corners are higher above a plane than a distance, and some are not. */
  private static boolean crosses(double[] xyz, Plane plane, double above) {
    boolean some = false;
    boolean others = false;
    for (int i = 0; i < xyz.length && !(some && others); i += 3) {
      boolean higher = plane.height(xyz[i], xyz[i + 1], xyz[i + 2]) > above;
      some |= higher;
      others |= !higher;
    }
    return some && others;
  }

  /**
   * Cuts a convex ring: along the line that most of it lies beyond first, which leaves fewest
   * pieces.
   *
   * @param thin what a ring reaches beyond a line by no more than this counts as within, m
   * @param beyond takes what lies outside, as convex rings side by side; to be forgotten where
   *     nothing lies within
   * @return what lies within; null where nothing does
   */
  double[] cut(double[] ring, double thin, List<double[]> beyond) {
    if (isBeyond(ring, apart, thin)) {
      return null;
    }
    double[] left = ring;
    boolean[] within = new boolean[lines.length / 3]; // lines that the ring is known to lie within
    while (true) {
      int farthest = -1;
      double far = thin;
      for (int line = 0, k = 0; k < lines.length; line++, k += 3) {
        if (within[line]) {
          continue;
        }
        double most = most(left, lines[k], lines[k + 1], lines[k + 2]);
        if (most <= thin) {
          within[line] = true;
        } else if (isBeyond(left, k, thin)) {
          apart = k;
          return null;
        } else if (most > far) {
          far = most;
          farthest = line;
        }
      }
      if (farthest < 0) {
        return left;
      }
      within[farthest] = true;
      double a = lines[3 * farthest];
      double b = lines[3 * farthest + 1];
      double c = lines[3 * farthest + 2];
      beyond.add(side(left, -a, -b, -c));
      left = side(left, a, b, c);
    }
  }

  /** Whether all of a ring lies beyond a line, and some by more than a distance. */
  private boolean isBeyond(double[] ring, int line, double thin) {
    double a = lines[line];
    double b = lines[line + 1];
    double c = lines[line + 2];
    boolean farther = false;
    for (int i = 0; i < ring.length; i += 2) {
      double beyond = a * ring[i] + b * ring[i + 1] + c;
      if (beyond < 0) {
        return false;
      }
      farther |= beyond > thin;
    }
    return farther;
  }

  /** How far the farthest corner of a ring lies beyond a line. */
  private static double most(double[] ring, double a, double b, double c) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < ring.length; i += 2) {
      double beyond = a * ring[i] + b * ring[i + 1] + c;
      most = beyond > most ? beyond : most;
    }
    return most;
  }

  /** What lies within of a box; empty where nothing does. */
  Polygon in(Extent2 box) {
    double[] corners = {
      box.minU(), box.minV(), box.maxU(), box.minV(), box.maxU(), box.maxV(), box.minU(), box.maxV()
    };
    double[] ring = cut(corners, 0, new ArrayList<>());
    return ring == null
        ? Rings.FACTORY.createPolygon()
        : Rings.FACTORY.createPolygon(Rings.linear(ring));
  }

  /** What of a ring that a line crosses does not lie beyond it. */
  private static double[] side(double[] ring, double a, double b, double c) {
    double[] out = new double[2 * kept(ring, a, b, c)];
    int n = 0;
    double lu = ring[ring.length - 2];
    double lv = ring[ring.length - 1];
    double last = a * lu + b * lv + c;
    for (int i = 0; i < ring.length; i += 2) {
      double u = ring[i];
      double v = ring[i + 1];
      double here = a * u + b * v + c;
      if ((last < 0 && here > 0) || (last > 0 && here < 0)) {
        double t = last / (last - here);
        out[n++] = lu + t * (u - lu);
        out[n++] = lv + t * (v - lv);
      }
      if (here <= 0) {
        out[n++] = u;
        out[n++] = v;
      }
      lu = u;
      lv = v;
      last = here;
    }
    return out;
  }

  /** How many corners are left of a ring that a line cuts. */
  private static int kept(double[] ring, double a, double b, double c) {
    int kept = 0;
    double last = a * ring[ring.length - 2] + b * ring[ring.length - 1] + c;
    for (int i = 0; i < ring.length; i += 2) {
      double here = a * ring[i] + b * ring[i + 1] + c;
      if ((last < 0 && here > 0) || (last > 0 && here < 0)) {
        kept++;
      }
      if (here <= 0) {
        kept++;
      }
      last = here;
    }
    return kept;
  }
}
