package org.coatrun.geometry.view;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.coatrun.geometry.solid.Ears;
import org.coatrun.geometry.solid.Kernel;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * What the drawings of a building have in common, each worked out once: sections of one name have
 * ends of one shape, and like floors cover them alike. Regions are alike where they are to the last
 * bit. May be asked by several threads.
 */
public final class Repeats {

  /** So many of each are kept: a building repeats few, but anything may come out of a cut. */
  private static final int MOST = 4096;

  private final Map<Polygon, Coordinate[][]> ears = new ConcurrentHashMap<>();
  private final Map<List<Geometry>, Geometry> covered = new ConcurrentHashMap<>();

  /** The corners of each triangle of a polygon; not to be changed. */
  Coordinate[][] ears(Polygon polygon) {
    Coordinate[][] triangles = ears.get(polygon);
    if (triangles == null) {
      triangles = cut(polygon);
      keep(ears, polygon, triangles);
    }
    return triangles;
  }

  /** What of a region is not in the rest of it. */
  Geometry covered(Geometry region, Geometry rest, Kernel kernel) {
    List<Geometry> both = List.of(region, rest);
    Geometry less = covered.get(both);
    if (less == null) {
      less = kernel.overlay().lessInPieces(region, rest);
      keep(covered, both, less);
    }
    return less;
  }

  private static <K, V> void keep(Map<K, V> known, K key, V value) {
    if (known.size() < MOST) {
      known.put(key, value);
    }
  }

  private static Coordinate[][] cut(Polygon polygon) {
    Geometry parts = Ears.of(polygon);
    Coordinate[][] triangles = new Coordinate[parts.getNumGeometries()][];
    for (int i = 0; i < triangles.length; i++) {
      triangles[i] = parts.getGeometryN(i).getCoordinates();
    }
    return triangles;
  }
}
