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

  /** A ring as u, v and height of each corner, what of it is above a window's foot, and in it. */
  private double[] ring = {};

  private double[] above = {};
  private double[] between = {};

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
    boolean bare = p.rest().isWhole();
    List<double[]> open = p.rest().rings();
    List<double[]> all = bare ? open : p.patch().rings();
    double stretch = p.patch().stretch() / size;
    for (int i = 0; i < outline.length; i++) {
      double low = axis.low() + i * size;
      double whole = within(all, p.patch().plane(), axis.direction(), low, size);
      if (whole > 0) {
        double left = bare ? whole : within(open, p.patch().plane(), axis.direction(), low, size);
        outline[i] += whole * stretch;
        heated[i] += left * stretch;
      }
    }
  }

  /** Area of a region, given by its rings, between two coordinates along the axis. */
  private double within(List<double[]> rings, Plane plane, Vec3 d, double low, double size) {
    double au = d.x() * plane.ux() + d.y() * plane.uy() + d.z() * plane.uz();
    double av = d.x() * plane.vx() + d.y() * plane.vy() + d.z() * plane.vz();
    double c =
        plane.offset() * (d.x() * plane.nx() + d.y() * plane.ny() + d.z() * plane.nz()) - low;
    double sum = 0;
    for (double[] corners : rings) {
      sum += within(corners, au, av, c, size);
    }
    return sum;
  }

  private double within(double[] corners, double au, double av, double c, double size) {
    int n = corners.length / 2;
    if (ring.length < 3 * n) {
      ring = new double[3 * n];
      above = new double[2 * ring.length];
      between = new double[2 * above.length];
    }
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      double u = corners[2 * i];
      double v = corners[2 * i + 1];
      double height = au * u + av * v + c;
      ring[3 * i] = u;
      ring[3 * i + 1] = v;
      ring[3 * i + 2] = height;
      least = height < least ? height : least;
      most = height > most ? height : most;
    }
    if (most <= 0 || least >= size) {
      return 0;
    }
    if (least >= 0 && most <= size) {
      return area(ring, 3 * n);
    }
    int m = clipped(ring, 3 * n, 0, 1, above);
    return area(between, clipped(above, m, size, -1, between));
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
