package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.coatrun.geometry.profile.FlatRing;
import org.coatrun.geometry.profile.Pieces;
import org.coatrun.geometry.profile.Quadrature;
import org.coatrun.geometry.profile.Region;
import org.coatrun.geometry.profile.Ring;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/** A ring at the start of a sweep and its partner at the end, as polygons with as many corners. */
record Loft(Ring start, Ring end, FlatRing flatStart, FlatRing flatEnd, boolean same) {

  /** A ring carried along unchanged. */
  static Loft of(Ring ring, int perQuarter) {
    FlatRing flat = FlatRing.of(ring, perQuarter);
    return new Loft(ring, ring, flat, flat, true);
  }

  /** A ring that becomes another one. */
  static Loft of(Ring start, Ring end, int perQuarter) {
    if (Objects.equals(start, end)) {
      return of(start, perQuarter);
    }
    FlatRing a = FlatRing.of(start, perQuarter);
    FlatRing b = FlatRing.of(end, perQuarter);
    if (alike(start, end) && a.points().size() == b.points().size()) {
      return new Loft(start, end, a, b, false);
    }
    Ring ca = Resample.commonWith(start, end);
    Ring cb = Resample.commonWith(end, start);
    return new Loft(ca, cb, FlatRing.of(ca, perQuarter), FlatRing.of(cb, perQuarter), false);
  }

  /** Rings of regions paired outer to outer and hole to hole. */
  static List<Loft> of(Region start, Region end, int perQuarter) {
    var out = new ArrayList<Loft>();
    out.add(of(start.outer(), end.outer(), perQuarter));
    for (int i = 0; i < start.holes().size(); i++) {
      out.add(of(start.holes().get(i), end.holes().get(i), perQuarter));
    }
    return out;
  }

  int size() {
    return flatStart.points().size();
  }

  /** Corner {@code j} a fraction {@code f} along the sweep. */
  Vec2 corner(int j, double f) {
    Vec2 a = flatStart.points().get(j);
    return same ? a : a.times(1 - f).plus(flatEnd.points().get(j).times(f));
  }

  /** Number of the piece that side {@code j} belongs to. */
  int piece(int j) {
    return flatStart.strips().get(j).piece();
  }

  boolean flatSide(int j) {
    return start.pieces().get(piece(j)) instanceof Segment2.Line
        && end.pieces().get(flatEnd.strips().get(j).piece()) instanceof Segment2.Line;
  }

  /** True area that side {@code j} sweeps over a sheet, the fraction going from f0 to f1. */
  double area(int j, Sheet sheet, double f0, double f1) {
    if (sheet.straight() && same && flatSide(j)) {
      return element(j, sheet, f0, f1, 0.5, 0.5);
    }
    if (sheet.straight() && same) {
      return Quadrature.integrate(u -> element(j, sheet, f0, f1, u, 0.5), 0, 1);
    }
    return Quadrature.integrate(
        s -> Quadrature.integrate(u -> element(j, sheet, f0, f1, u, s), 0, 1), 0, 1);
  }

  private double element(int j, Sheet sheet, double f0, double f1, double u, double s) {
    double f = f0 + s * (f1 - f0);
    Vec2 a = point(start, flatStart.strips().get(j), u);
    Vec2 da = slope(start, flatStart.strips().get(j), u);
    if (same) {
      return sheet.direction(da, s).cross(sheet.speed(a, s)).length();
    }
    Vec2 b = point(end, flatEnd.strips().get(j), u);
    Vec2 db = slope(end, flatEnd.strips().get(j), u);
    Vec2 p = a.times(1 - f).plus(b.times(f));
    Vec2 dp = da.times(1 - f).plus(db.times(f));
    Vec3 change = sheet.direction(b.minus(a).times(f1 - f0), s);
    return sheet.direction(dp, s).cross(sheet.speed(p, s).plus(change)).length();
  }

  private static Vec2 point(Ring ring, FlatRing.Strip strip, double u) {
    return Pieces.at(
        ring.pieces().get(strip.piece()), strip.from() + u * (strip.to() - strip.from()));
  }

  private static Vec2 slope(Ring ring, FlatRing.Strip strip, double u) {
    double width = strip.to() - strip.from();
    return Pieces.slope(ring.pieces().get(strip.piece()), strip.from() + u * width).times(width);
  }

  private static boolean alike(Ring a, Ring b) {
    boolean alike = a.pieces().size() == b.pieces().size();
    for (int i = 0; alike && i < a.pieces().size(); i++) {
      alike = a.pieces().get(i).getClass() == b.pieces().get(i).getClass();
    }
    return alike;
  }
}
