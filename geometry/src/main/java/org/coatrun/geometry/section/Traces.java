package org.coatrun.geometry.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coatrun.geometry.exposure.Axis;
import org.coatrun.geometry.exposure.CoveredPatch;
import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.solid.Plane;
import org.locationtech.jts.geom.Coordinate;

/** What planes across a member's axis leave of its sides, whole and exposed. */
final class Traces {

  /** Patches this nearly in the plane leave no trace. */
  private static final double FLAT = 1e-6;

  private static final double SHORT = 1e-7;

  private final Axis axis;
  private final List<Side> sides = new ArrayList<>();

  /**
   * A side patch; along the axis a point (u, v) of it lies at {@code au u + av v} and a constant.
   */
  private record Side(
      CoveredPatch patch,
      List<double[]> whole,
      List<double[]> exposed,
      double au,
      double av,
      double slope) {}

  /** Crossings of one side, sorted. */
  private double[] at = new double[16];

  /**
   * Both traces at one place.
   *
   * @param whole of all sides, covered or not; the very same where all are exposed
   */
  record Cut(Trace exposed, Trace whole) {}

  Traces(Exposure exposure, Axis axis) {
    this.axis = axis;
    Plane across = axis.at(axis.low());
    for (CoveredPatch patch : exposure.patches()) {
      if (patch.use() == CoveredPatch.Use.SIDE) {
        Plane p = patch.patch().plane();
        double au = across.nx() * p.ux() + across.ny() * p.uy() + across.nz() * p.uz();
        double av = across.nx() * p.vx() + across.ny() * p.vy() + across.nz() * p.vz();
        double slope = Math.hypot(au, av);
        if (slope >= FLAT) {
          List<double[]> exposed = patch.rest().rings();
          List<double[]> whole = patch.rest().isWhole() ? exposed : patch.patch().rings();
          sides.add(new Side(patch, whole, exposed, au, av, slope));
        }
      }
    }
  }

  /**
   * The share of the contour that is exposed at a share of the length; no number where there is no
   * contour.
   */
  double exposedShare(double place) {
    Plane across = across(place);
    double whole = 0;
    double exposed = 0;
    for (Side side : sides) {
      double all = length(side, side.whole(), across);
      whole += all;
      exposed += side.patch().rest().isWhole() ? all : length(side, side.exposed(), across);
    }
    return exposed / whole;
  }

  /** Length of a side's trace, arcs at their true length. */
  private double length(Side side, List<double[]> rings, Plane across) {
    double length = 0;
    int n = crossings(rings, side, height(side, across));
    for (int i = 0; i + 1 < n; i += 2) {
      double piece = at[i + 1] - at[i];
      length += piece > SHORT ? piece : 0;
    }
    return length * side.patch().patch().stretch();
  }

  /** How far the origin of a side's own axes lies along the member from a plane across it. */
  private static double height(Side side, Plane across) {
    Plane p = side.patch().patch().plane();
    return p.offset() * across.dot(p) - across.offset();
  }

  private Plane across(double place) {
    return axis.at(axis.low() + place * axis.length());
  }

  /** The traces at a share of the length. */
  Cut at(double place) {
    Plane across = across(place);
    List<Trace.Piece> whole = new ArrayList<>();
    List<Trace.Piece> exposed = new ArrayList<>();
    boolean bare = true;
    for (Side side : sides) {
      int before = whole.size();
      add(side, side.whole(), across, whole);
      if (side.patch().rest().isWhole()) {
        exposed.addAll(whole.subList(before, whole.size()));
      } else {
        add(side, side.exposed(), across, exposed);
        bare = false;
      }
    }
    Trace all = new Trace(whole);
    return new Cut(bare ? all : new Trace(exposed), all);
  }

  private void add(Side side, List<double[]> rings, Plane across, List<Trace.Piece> out) {
    Plane p = side.patch().patch().plane();
    double au = side.au();
    double av = side.av();
    double slope = side.slope();
    double c = height(side, across);
    int n = crossings(rings, side, c);
    // the foot of the plane's origin on the line, and the line's direction
    double fu = -c * au / (slope * slope);
    double fv = -c * av / (slope * slope);
    for (int i = 0; i + 1 < n; i += 2) {
      Coordinate a = point(p, across, fu - at[i] * av / slope, fv + at[i] * au / slope);
      Coordinate b = point(p, across, fu - at[i + 1] * av / slope, fv + at[i + 1] * au / slope);
      double length = a.distance(b);
      if (length > SHORT) {
        double stretch = side.patch().patch().stretch();
        out.add(
            isOnward(a, b, p, across)
                ? new Trace.Piece(a, b, length, stretch)
                : new Trace.Piece(b, a, length, stretch));
      }
    }
  }

  /** Whether the steel, which is behind the patch, lies left of the way from one end to another. */
  private static boolean isOnward(Coordinate a, Coordinate b, Plane p, Plane across) {
    double nu = p.nx() * across.ux() + p.ny() * across.uy() + p.nz() * across.uz();
    double nv = p.nx() * across.vx() + p.ny() * across.vy() + p.nz() * across.vz();
    return (b.x - a.x) * -nv + (b.y - a.y) * nu > 0;
  }

  private static Coordinate point(Plane p, Plane across, double u, double v) {
    double x = p.x(u, v);
    double y = p.y(u, v);
    double z = p.z(u, v);
    return new Coordinate(across.u(x, y, z), across.v(x, y, z));
  }

  /** Finds where the line au u + av v + c = 0 crosses the rings, sorted along the line. */
  private int crossings(List<double[]> rings, Side side, double c) {
    int n = 0;
    for (double[] ring : rings) {
      if (n + ring.length > at.length) {
        at = Arrays.copyOf(at, 2 * (n + ring.length));
      }
      n = crossings(ring, side, c, n);
    }
    Arrays.sort(at, 0, n);
    return n;
  }

  private int crossings(double[] r, Side side, double c, int from) {
    double au = side.au();
    double av = side.av();
    int n = from;
    int last = r.length - 2;
    double h = au * r[last] + av * r[last + 1] + c;
    for (int j = 0; j < r.length; j += 2) {
      double k = au * r[j] + av * r[j + 1] + c;
      // what lies on the line counts as above it, so that crossings come in pairs
      if (h < 0 != k < 0) {
        double t = h / (h - k);
        double u = r[last] + t * (r[j] - r[last]);
        double v = r[last + 1] + t * (r[j + 1] - r[last + 1]);
        at[n++] = (v * au - u * av) / side.slope();
      }
      h = k;
      last = j;
    }
    return n;
  }
}
