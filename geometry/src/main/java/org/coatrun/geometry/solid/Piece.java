package org.coatrun.geometry.solid;

import java.util.List;
import org.locationtech.jts.geom.Polygon;

/** A part of a region: a convex ring, or where it is none of few corners a polygon of any form. */
final class Piece {

  /** Null where it is not convex. */
  final double[] ring;

  private final Polygon polygon;
  private Extent2 box;

  private Piece(double[] ring, Polygon polygon) {
    this.ring = ring;
    this.polygon = polygon;
  }

  static Piece of(double[] convex) {
    return new Piece(convex, null);
  }

  static Piece of(Polygon polygon) {
    return new Piece(ConvexClip.ring(polygon), polygon);
  }

  Extent2 box() {
    if (box == null) {
      box = ring == null ? Extent2.of(polygon) : Extent2.of(ring);
    }
    return box;
  }

  Polygon polygon() {
    return polygon == null ? Rings.FACTORY.createPolygon(Rings.linear(ring)) : polygon;
  }

  double area() {
    return ring == null ? polygon.getArea() : Rings.area(ring);
  }

  /** Its outline, counter-clockwise, and its holes, clockwise. */
  List<double[]> outline() {
    return ring == null ? Rings.of(polygon) : List.of(ring);
  }

  /** The same as convex rings side by side. */
  List<double[]> convex() {
    return ring == null ? ConvexParts.of(polygon) : List.of(ring);
  }
}
