package org.coatrun.geometry.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.coatrun.geometry.exposure.CoveredPatch;
import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.solid.Plane;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * The contour, or its exposed part, where a plane cuts across a member: straight pieces with the
 * steel on their left, in the plane's own axes.
 *
 * @param pieces in the order of the member's patches
 */
record Trace(List<Piece> pieces) {

  /** Patches this nearly in the plane leave no trace. */
  private static final double FLAT = 1e-6;

  private static final double SHORT = 1e-7;

  /**
   * One straight piece.
   *
   * @param stretch arc over chord, for a piece that stands for an arc
   */
  record Piece(Coordinate from, Coordinate to, double stretch) {

    double length() {
      return from.distance(to);
    }

    double du() {
      return (to.x - from.x) / length();
    }

    double dv() {
      return (to.y - from.y) / length();
    }
  }

  /** The exposed sides of a member where the plane cuts them. */
  static Trace exposed(Exposure exposure, Plane across) {
    return of(exposure, across, CoveredPatch::rest);
  }

  /** All sides of a member where the plane cuts them, covered or not. */
  static Trace whole(Exposure exposure, Plane across) {
    return of(exposure, across, p -> p.patch().region());
  }

  private static Trace of(Exposure exposure, Plane across, Function<CoveredPatch, Geometry> part) {
    List<Piece> out = new ArrayList<>();
    for (CoveredPatch p : exposure.patches()) {
      if (p.use() == CoveredPatch.Use.SIDE) {
        Geometry g = part.apply(p);
        if (!g.isEmpty()) {
          add(p, g, across, out);
        }
      }
    }
    return new Trace(List.copyOf(out));
  }

  /** Length of all chords, m. */
  double chords() {
    return pieces.stream().mapToDouble(Piece::length).sum();
  }

  /** Length of the contour, arcs at their true length, m. */
  double length() {
    return pieces.stream().mapToDouble(p -> p.length() * p.stretch()).sum();
  }

  private static void add(CoveredPatch patch, Geometry g, Plane across, List<Piece> out) {
    Plane p = patch.patch().plane();
    double au = across.nx() * p.ux() + across.ny() * p.uy() + across.nz() * p.uz();
    double av = across.nx() * p.vx() + across.ny() * p.vy() + across.nz() * p.vz();
    double slope = Math.hypot(au, av);
    if (slope < FLAT) {
      return;
    }
    double c = p.offset() * across.dot(p) - across.offset();
    double[] at = crossings(g, au, av, c, slope);
    // the foot of the plane's origin on the line, and the line's direction
    double fu = -c * au / (slope * slope);
    double fv = -c * av / (slope * slope);
    for (int i = 0; i + 1 < at.length; i += 2) {
      Coordinate a = point(p, across, fu - at[i] * av / slope, fv + at[i] * au / slope);
      Coordinate b = point(p, across, fu - at[i + 1] * av / slope, fv + at[i + 1] * au / slope);
      if (a.distance(b) > SHORT) {
        out.add(piece(a, b, p, across, patch.patch().stretch()));
      }
    }
  }

  private static Piece piece(Coordinate a, Coordinate b, Plane p, Plane across, double stretch) {
    double nu = p.nx() * across.ux() + p.ny() * across.uy() + p.nz() * across.uz();
    double nv = p.nx() * across.vx() + p.ny() * across.vy() + p.nz() * across.vz();
    boolean onward = (b.x - a.x) * -nv + (b.y - a.y) * nu > 0;
    return onward ? new Piece(a, b, stretch) : new Piece(b, a, stretch);
  }

  private static Coordinate point(Plane p, Plane across, double u, double v) {
    double x = p.x(u, v);
    double y = p.y(u, v);
    double z = p.z(u, v);
    return new Coordinate(across.u(x, y, z), across.v(x, y, z));
  }

  /** Where the line au u + av v + c = 0 crosses the region's rings, sorted along the line. */
  private static double[] crossings(Geometry g, double au, double av, double c, double slope) {
    double[] out = new double[8];
    int n = 0;
    for (int i = 0; i < g.getNumGeometries(); i++) {
      if (g.getGeometryN(i) instanceof Polygon p) {
        for (int k = -1; k < p.getNumInteriorRing(); k++) {
          LineString ring = k < 0 ? p.getExteriorRing() : p.getInteriorRingN(k);
          Coordinate[] r = ring.getCoordinates();
          out = n + r.length > out.length ? Arrays.copyOf(out, 2 * (n + r.length)) : out;
          n = ring(r, new double[] {au, av, c, slope}, out, n);
        }
      }
    }
    Arrays.sort(out, 0, n);
    return Arrays.copyOf(out, n);
  }

  private static int ring(Coordinate[] r, double[] line, double[] out, int from) {
    int n = from;
    for (int j = 1; j < r.length; j++) {
      double h = line[0] * r[j - 1].x + line[1] * r[j - 1].y + line[2];
      double k = line[0] * r[j].x + line[1] * r[j].y + line[2];
      // what lies on the line counts as above it, so that crossings come in pairs
      if (h < 0 != k < 0) {
        double t = h / (h - k);
        double u = r[j - 1].x + t * (r[j].x - r[j - 1].x);
        double v = r[j - 1].y + t * (r[j].y - r[j - 1].y);
        out[n++] = (v * line[0] - u * line[1]) / line[3];
      }
    }
    return n;
  }
}
