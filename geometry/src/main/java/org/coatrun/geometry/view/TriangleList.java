package org.coatrun.geometry.view;

import java.util.Arrays;
import java.util.BitSet;
import org.coatrun.geometry.solid.Plane;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Gathers regions of planes as triangles. */
final class TriangleList {

  private final Repeats repeats;
  private double[] points = new double[9 * 64];
  private final BitSet coated = new BitSet();
  private int count;

  TriangleList(Repeats repeats) {
    this.repeats = repeats;
  }

  void add(Plane plane, Geometry region, boolean side) {
    for (int i = 0; i < region.getNumGeometries(); i++) {
      if (region.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        polygon(plane, polygon, side);
      }
    }
  }

  private void polygon(Plane plane, Polygon polygon, boolean side) {
    Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
    if (polygon.getNumInteriorRing() == 0 && ring.length == 4) {
      triangle(plane, ring, side);
      return;
    }
    if (polygon.getNumInteriorRing() == 0 && isConvexQuad(ring)) {
      triangle(plane, new Coordinate[] {ring[0], ring[1], ring[2]}, side);
      triangle(plane, new Coordinate[] {ring[0], ring[2], ring[3]}, side);
      return;
    }
    for (Coordinate[] corners : repeats.ears(polygon)) {
      triangle(plane, corners, side);
    }
  }

  /** By far the most faces are: they need no search for ears. */
  private static boolean isConvexQuad(Coordinate[] ring) {
    if (ring.length != 5) {
      return false;
    }
    int turn = Orientation.index(ring[3], ring[0], ring[1]);
    return turn != 0
        && turn == Orientation.index(ring[0], ring[1], ring[2])
        && turn == Orientation.index(ring[1], ring[2], ring[3])
        && turn == Orientation.index(ring[2], ring[3], ring[0]);
  }

  private void triangle(Plane plane, Coordinate[] c, boolean side) {
    if (points.length < 9 * (count + 1)) {
      points = Arrays.copyOf(points, 2 * points.length);
    }
    for (int k = 0; k < 3; k++) {
      points[9 * count + 3 * k] = plane.x(c[k].x, c[k].y);
      points[9 * count + 3 * k + 1] = plane.y(c[k].x, c[k].y);
      points[9 * count + 3 * k + 2] = plane.z(c[k].x, c[k].y);
    }
    coated.set(count++, side);
  }

  Triangles all() {
    boolean[] side = new boolean[count];
    for (int i = 0; i < count; i++) {
      side[i] = coated.get(i);
    }
    return new Triangles(Arrays.copyOf(points, 9 * count), side);
  }
}
