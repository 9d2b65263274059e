package org.coatrun.geometry.section;

import org.coatrun.geometry.solid.ConvexSum;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.index.strtree.STRtree;

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

  /** Ends of pieces nearer than a tenth of a millimetre meet: meshes are rounded. */
  private static final double SAME = 1e-4;

  /** Twice the grid that sections are seen on: strips thinner than this lie along the steel. */
  private static final double TOUCH = 2 * CoatFactors.GRID;

  private static final double STRAIGHT = 1e-6;
  private static final double STEP = Math.PI / 32;

  private final Trace trace;
  private final double t;
  private final ConvexSum coat = new ConvexSum();

  private CoatOutline(Trace trace, double t) {
    this.trace = trace;
    this.t = t;
  }

  /** k in P t + k t², where P is the exposed contour and t a thickness, both in metres. */
  static double cornerFactor(Trace trace, Geometry steel, double t) {
    CoatOutline outline = new CoatOutline(trace, t);
    outline.strips();
    outline.sectors();
    return (outline.coat.areaOutside(steel, TOUCH) - trace.chords() * t) / (t * t);
  }

  private void strips() {
    for (Trace.Piece p : trace.pieces()) {
      double nu = p.dv() * t;
      double nv = -p.du() * t;
      Coordinate from = p.from();
      Coordinate to = p.to();
      coat.add(from.x, from.y, from.x + nu, from.y + nv, to.x + nu, to.y + nv, to.x, to.y);
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
    double[] ring = new double[2 * n + 4];
    ring[0] = a.to().x;
    ring[1] = a.to().y;
    for (int i = 0; i <= n; i++) {
      double angle = first + i * step;
      ring[2 * i + 2] = a.to().x + radius * Math.cos(angle);
      ring[2 * i + 3] = a.to().y + radius * Math.sin(angle);
    }
    coat.add(ring);
  }
}
