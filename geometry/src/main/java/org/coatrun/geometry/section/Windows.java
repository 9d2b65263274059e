package org.coatrun.geometry.section;

import java.util.List;
import org.coatrun.geometry.exposure.Axis;
import org.coatrun.geometry.exposure.CoveredPatch;
import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.shared.shape.Vec3;

/**
 * Contour and heated perimeter over stretches of a member: side area in each stretch over its
 * length, which is the mean perimeter there, exactly.
 */
final class Windows {

  private static final double USUAL = 1.5;
  private static final int FEWEST = 4;
  private static final int MOST = 16;

  final double[] outline;
  final double[] heated;

  /**
   * The ring in hand as u, v and height of each corner, what of it is above a window's foot, and in
   * it.
   */
  private double[] ring = {};

  private double[] above = {};
  private double[] between = {};

  /** Three numbers a corner. */
  private int count;

  private double least;
  private double most;

  private Windows(int n) {
    outline = new double[n];
    heated = new double[n];
  }

  static Windows of(Exposure exposure, Axis axis) {
    int n = (int) Math.max(FEWEST, Math.min(MOST, Math.floor(axis.length() / USUAL)));
    Windows w = new Windows(n);
    double size = axis.length() / n;
    for (CoveredPatch p : exposure.patches()) {
      if (p.use() == CoveredPatch.Use.SIDE) {
        w.add(p, axis, size);
      }
    }
    return w;
  }

  private void add(CoveredPatch p, Axis axis, double size) {
    Plane plane = p.patch().plane();
    Vec3 d = axis.direction();
    double au = d.x() * plane.ux() + d.y() * plane.uy() + d.z() * plane.uz();
    double av = d.x() * plane.vx() + d.y() * plane.vy() + d.z() * plane.vz();
    double c = plane.offset() * plane.along(d) - axis.low();
    double stretch = p.patch().stretch() / size;
    List<double[]> open = p.rest().rings();
    boolean bare = p.rest().isWhole();
    for (double[] corners : bare ? open : p.patch().rings()) {
      stand(corners, au, av, c);
      share(size, stretch, true, bare);
    }
    if (!bare) {
      for (double[] corners : open) {
        stand(corners, au, av, c);
        share(size, stretch, false, true);
      }
    }
  }

  /** Takes a ring in hand: where each corner lies along the axis, and the least and greatest. */
  private void stand(double[] corners, double au, double av, double c) {
    count = 3 * (corners.length / 2);
    if (ring.length < count) {
      ring = new double[count];
      above = new double[2 * count];
      between = new double[2 * above.length];
    }
    least = Double.POSITIVE_INFINITY;
    most = Double.NEGATIVE_INFINITY;
    for (int i = 0, k = 0; i < corners.length; i += 2, k += 3) {
      double u = corners[i];
      double v = corners[i + 1];
      double height = au * u + av * v + c;
      ring[k] = u;
      ring[k + 1] = v;
      ring[k + 2] = height;
      least = height < least ? height : least;
      most = height > most ? height : most;
    }
  }

  /** Adds what of the ring lies in each window, to the contour, to what is heated, or to both. */
  private void share(double size, double stretch, boolean toOutline, boolean toHeated) {
    for (int i = 0; i < outline.length; i++) {
      double low = i * size;
      double high = low + size;
      if (most > low && least < high) {
        boolean inside = least >= low && most <= high;
        double area =
            inside
                ? area(ring, count)
                : area(
                    between,
                    clipped(above, clipped(ring, count, low, 1, above), high, -1, between));
        outline[i] += toOutline ? area * stretch : 0;
        heated[i] += toHeated ? area * stretch : 0;
      }
    }
  }

  /** The part where (h - at) · sign is not negative; gives how many numbers it takes. */
  private static int clipped(double[] in, int n, double at, int sign, double[] out) {
    int m = 0;
    for (int i = 0; i < n; i += 3) {
      int j = i + 3 == n ? 0 : i + 3;
      double a = sign * (in[i + 2] - at);
      double b = sign * (in[j + 2] - at);
      if (a >= 0) {
        out[m] = in[i];
        out[m + 1] = in[i + 1];
        out[m + 2] = in[i + 2];
        m += 3;
      }
      if ((a < 0 && b > 0) || (a > 0 && b < 0)) {
        double t = a / (a - b);
        out[m] = in[i] + t * (in[j] - in[i]);
        out[m + 1] = in[i + 1] + t * (in[j + 1] - in[i + 1]);
        out[m + 2] = at;
        m += 3;
      }
    }
    return m;
  }

  private static double area(double[] r, int n) {
    double sum = 0;
    for (int i = 3; i + 3 < n; i += 3) {
      sum += (r[i] - r[0]) * (r[i + 4] - r[1]) - (r[i + 3] - r[0]) * (r[i + 1] - r[1]);
    }
    return 0.5 * sum;
  }
}
