package org.coatrun.geometry.solid;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;

/** A part of a region: a convex ring, or where it is none of few corners a polygon of any form. */
final class Piece {

  /** Null where it is not convex. */
  final double[] ring;

  private final Polygon polygon;
  private Extent2 box;
  private Optional<ConvexTree> tree;

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

  /** The hull and pockets of one that is not convex; empty where there are too many. */
  Optional<ConvexTree> tree() {
    if (tree == null) {
      tree = ConvexTree.of(polygon);
    }
    return tree;
  }

  /** Adds its outline, counter-clockwise, and its holes, clockwise. */
  void outline(List<double[]> to) {
    if (ring == null) {
      to.addAll(Rings.of(polygon));
    } else {
      to.add(ring);
    }
  }

  /** Adds the same as convex rings side by side. */
  void convex(List<double[]> to) {
    if (ring == null) {
      to.addAll(ConvexParts.of(polygon));
    } else {
      to.add(ring);
    }
  }
}
