package org.coatrun.geometry.section;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.geometry.solid.Kernel;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The coat about a section as its true offset: all that lies within a thickness of an exposed piece
 * of the contour, on its outer side, less the steel.
 *
 * <p>Over each exposed piece stands a strip; about a convex corner between two exposed pieces lies
 * a sector, since a sprayed coat of even thickness is round there; beside a covered piece the coat
 * ends square. What strips share at concave corners, in fillets or between flanges close together
 * counts once.
 */
final class CoatOutline {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** Ends of pieces nearer than a tenth of a millimetre meet: meshes are rounded. */
  private static final double SAME = 1e-4;

  private static final double STRAIGHT = 1e-6;
  private static final double STEP = Math.PI / 32;

  private final Trace trace;
  private final double t;
  private final List<Geometry> parts = new ArrayList<>();

  private CoatOutline(Trace trace, double t) {
    this.trace = trace;
    this.t = t;
  }

  /** k in P t + k t², where P is the exposed contour and t a thickness, both in metres. */
  static double cornerFactor(Trace trace, Geometry steel, double t, Kernel kernel) {
    CoatOutline outline = new CoatOutline(trace, t);
    outline.strips();
    outline.sectors();
    if (outline.parts.isEmpty()) {
      return 0;
    }
    Geometry all =
        OverlayNGRobust.union(
            FACTORY.createGeometryCollection(outline.parts.toArray(new Geometry[0])));
    double area = kernel.overlay().less(all, steel).getArea();
    return (area - trace.chords() * t) / (t * t);
  }

  private void strips() {
    for (Trace.Piece p : trace.pieces()) {
      double nu = p.dv() * t;
      double nv = -p.du() * t;
      add(
          p.from(),
          new Coordinate(p.from().x + nu, p.from().y + nv),
          new Coordinate(p.to().x + nu, p.to().y + nv),
          p.to());
    }
  }

  private void sectors() {
    STRtree starts = new STRtree();
    for (Trace.Piece p : trace.pieces()) {
      starts.insert(new Envelope(p.from()), p);
    }
    for (Trace.Piece p : trace.pieces()) {
      Envelope here = new Envelope(p.to());
      here.expandBy(SAME);
      Trace.Piece next = null;
      for (Object o : starts.query(here)) {
        Trace.Piece q = (Trace.Piece) o;
        if (next == null || q.from().distance(p.to()) < next.from().distance(p.to())) {
          next = q;
        }
      }
      if (next != null) {
        sector(p, next);
      }
    }
  }

  /** Round a convex corner, as a polygon of the sector's own area. */
  private void sector(Trace.Piece a, Trace.Piece b) {
    double turn = Math.atan2(a.du() * b.dv() - a.dv() * b.du(), a.du() * b.du() + a.dv() * b.dv());
    if (turn < STRAIGHT) {
      return;
    }
    int n = (int) Math.ceil(turn / STEP);
    double step = turn / n;
    double radius = t * Math.sqrt(step / Math.sin(step));
    double first = Math.atan2(-a.du(), a.dv());
    Coordinate[] ring = new Coordinate[n + 2];
    ring[0] = a.to();
    for (int i = 0; i <= n; i++) {
      double angle = first + i * step;
      ring[i + 1] =
          new Coordinate(a.to().x + radius * Math.cos(angle), a.to().y + radius * Math.sin(angle));
    }
    add(ring);
  }

  private void add(Coordinate... ring) {
    Coordinate[] closed = new Coordinate[ring.length + 1];
    System.arraycopy(ring, 0, closed, 0, ring.length);
    closed[ring.length] = ring[0].copy();
    Polygon polygon = FACTORY.createPolygon(closed);
    if (polygon.getArea() > 0) {
      parts.add(polygon);
    }
  }
}
