package org.coatrun.geometry.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coatrun.geometry.exposure.Axis;
import org.coatrun.geometry.exposure.CoveredPatch;
import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.solid.Plane;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

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
  private record Side(CoveredPatch patch, double au, double av, double slope) {}

  /**
   * Both traces at one place.
   *
   * @param whole of all sides, covered or not; the very same where all are exposed
   */
  record Cut(Trace exposed, Trace whole) {

    /** The share of the contour that is exposed; no number where there is none. */
    @SuppressWarnings("ReferenceEquality") // equal ones that are not the same do no harm
    double share() {
      double all = whole.length();
      return (exposed == whole ? all : exposed.length()) / all;
    }
  }

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
          sides.add(new Side(patch, au, av, slope));
        }
      }
    }
  }

  /** The traces at a share of the length. */
  Cut at(double place) {
    Plane across = axis.at(axis.low() + place * axis.length());
    List<Trace.Piece> whole = new ArrayList<>();
    List<Trace.Piece> exposed = new ArrayList<>();
    boolean bare = true;
    for (Side side : sides) {
      int before = whole.size();
      add(side, side.patch().patch().region(), across, whole);
      if (isBare(side.patch())) {
        exposed.addAll(whole.subList(before, whole.size()));
      } else {
        add(side, side.patch().rest(), across, exposed);
        bare = false;
      }
    }
    Trace all = new Trace(whole);
    return new Cut(bare ? all : new Trace(exposed), all);
  }

  @SuppressWarnings("ReferenceEquality") // what nothing covers is left as the region itself
  private static boolean isBare(CoveredPatch patch) {
    return patch.rest() == patch.patch().region();
  }

  private static void add(Side side, Geometry g, Plane across, List<Trace.Piece> out) {
    Plane p = side.patch().patch().plane();
    double au = side.au();
    double av = side.av();
    double slope = side.slope();
    double c = p.offset() * across.dot(p) - across.offset();
    double[] at = crossings(g, side, c);
    // the foot of the plane's origin on the line, and the line's direction
    double fu = -c * au / (slope * slope);
    double fv = -c * av / (slope * slope);
    for (int i = 0; i + 1 < at.length; i += 2) {
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

  /** Where the line au u + av v + c = 0 crosses the region's rings, sorted along the line. */
  private static double[] crossings(Geometry g, Side side, double c) {
    double[] out = new double[8];
    int n = 0;
    for (int i = 0; i < g.getNumGeometries(); i++) {
      if (g.getGeometryN(i) instanceof Polygon p) {
        for (int k = -1; k < p.getNumInteriorRing(); k++) {
          LineString ring = k < 0 ? p.getExteriorRing() : p.getInteriorRingN(k);
          Coordinate[] r = ring.getCoordinates();
          out = n + r.length > out.length ? Arrays.copyOf(out, 2 * (n + r.length)) : out;
          n = ring(r, side, c, out, n);
        }
      }
    }
    Arrays.sort(out, 0, n);
    return Arrays.copyOf(out, n);
  }

  private static int ring(Coordinate[] r, Side side, double c, double[] out, int from) {
    double au = side.au();
    double av = side.av();
    int n = from;
    for (int j = 1; j < r.length; j++) {
      double h = au * r[j - 1].x + av * r[j - 1].y + c;
      double k = au * r[j].x + av * r[j].y + c;
      // what lies on the line counts as above it, so that crossings come in pairs
      if (h < 0 != k < 0) {
        double t = h / (h - k);
        double u = r[j - 1].x + t * (r[j].x - r[j - 1].x);
        double v = r[j - 1].y + t * (r[j].y - r[j - 1].y);
        out[n++] = (v * au - u * av) / side.slope();
      }
    }
    return n;
  }
}
