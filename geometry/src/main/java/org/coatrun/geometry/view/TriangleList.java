package org.coatrun.geometry.view;

import java.util.Arrays;
import java.util.BitSet;
import org.coatrun.geometry.solid.ConvexParts;
import org.coatrun.geometry.solid.Plane;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Gathers regions of planes as triangles. */
final class TriangleList {

  private double[] points = new double[9 * 64];
  private final BitSet coated = new BitSet();
  private int count;

  void add(Plane plane, Geometry region, boolean side) {
    for (int i = 0; i < region.getNumGeometries(); i++) {
      if (region.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        polygon(plane, polygon, side);
      }
    }
  }

  private void polygon(Plane plane, Polygon polygon, boolean side) {
    for (double[] ring : ConvexParts.of(polygon)) {
      for (int i = 4; i < ring.length; i += 2) {
        corner(plane, ring[0], ring[1], 0);
        corner(plane, ring[i - 2], ring[i - 1], 3);
        corner(plane, ring[i], ring[i + 1], 6);
        coated.set(count++, side);
      }
    }
  }

  private void corner(Plane plane, double u, double v, int place) {
    int at = 9 * count + place;
    if (points.length < at + 3) {
      points = Arrays.copyOf(points, 2 * points.length);
    }
    points[at] = plane.x(u, v);
    points[at + 1] = plane.y(u, v);
    points[at + 2] = plane.z(u, v);
  }

  Triangles all() {
    boolean[] side = new boolean[count];
    for (int i = 0; i < count; i++) {
      side[i] = coated.get(i);
    }
    return new Triangles(Arrays.copyOf(points, 9 * count), side);
  }
}
