package org.coatrun.geometry.profile;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Vec2;

/**
 * A ring as a polygon of exactly the same area, each side knowing the piece and the stretch of its
 * parameter that it stands for.
 *
 * <p>The ends of pieces stay where they are; the points between are moved off the curve, all by the
 * same share, until the area is that of the curve. An affine map keeps that property. A full round
 * becomes a regular polygon.
 *
 * @param points corners in order
 * @param strips one for each side, from corner i to corner i + 1
 */
public record FlatRing(List<Vec2> points, List<Strip> strips) {

  /**
   * The part of a piece that a side stands for.
   *
   * @param piece number of the piece in its ring
   */
  public record Strip(int piece, double from, double to) {}

  public FlatRing {
    points = List.copyOf(points);
    strips = List.copyOf(strips);
  }

  /**
   * Flattens a ring.
   *
   * @param perQuarter strips for each quarter turn of an arc, at least one
   */
  public static FlatRing of(Ring ring, int perQuarter) {
    var points = new ArrayList<Vec2>();
    var strips = new ArrayList<Strip>();
    boolean whole = ring.pieces().size() == 1;
    for (int i = 0; i < ring.pieces().size(); i++) {
      Segment2 piece = ring.pieces().get(i);
      int n = strips(piece, perQuarter, whole);
      double first = Pieces.first(piece);
      double step = (Pieces.last(piece) - first) / n;
      points.addAll(corners(piece, n, whole));
      for (int j = 0; j < n; j++) {
        strips.add(new Strip(i, first + j * step, first + (j + 1) * step));
      }
    }
    return new FlatRing(points, strips);
  }

  /** All corners of a piece but its last. */
  private static List<Vec2> corners(Segment2 piece, int n, boolean whole) {
    if (piece instanceof Segment2.Arc a) {
      return ArcCorners.of(a, n, whole);
    }
    return piece instanceof Segment2.Spline s
        ? SplineCorners.of(s, n)
        : List.of(Pieces.start(piece));
  }

  private static int strips(Segment2 piece, int perQuarter, boolean whole) {
    if (piece instanceof Segment2.Arc a) {
      int n = (int) Math.ceil(Math.abs(a.sweep()) / (Math.PI / 2) * perQuarter - 1e-9);
      return Math.max(whole ? 3 : 2, n);
    }
    if (piece instanceof Segment2.Spline s) {
      return Math.max(whole ? 3 : 2, s.poles().size() * perQuarter);
    }
    return 1;
  }
}
