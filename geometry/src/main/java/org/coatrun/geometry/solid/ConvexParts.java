package org.coatrun.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Cuts polygons into convex ones. */
public final class ConvexParts {

  private ConvexParts() {}

  /** Rings of u and v in turn, counter-clockwise, side by side, the first corner not repeated. */
  public static List<double[]> of(Polygon polygon) {
    double[] ring = ConvexClip.ring(polygon);
    if (ring != null) {
      return List.of(ring);
    }
    return ConvexTree.of(polygon)
        .map(ConvexTree::parts)
        .orElseGet(() -> Rings.of(Ears.of(polygon)));
  }

  /** The same of all polygons of a region. */
  static List<double[]> of(Geometry region) {
    List<double[]> parts = new ArrayList<>();
    for (int i = 0; i < region.getNumGeometries(); i++) {
      if (region.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        parts.addAll(of(polygon));
      }
    }
    return parts;
  }
}
