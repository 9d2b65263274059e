package org.coatrun.geometry.solid;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/** Cuts polygons into triangles. */
public final class Ears {

  /** What no eye sees, m. */
  private static final double ROUNDING = 1e-6;

  private Ears() {}

  /**
   * The triangles of a polygon; of one that crosses itself, those of all that it encloses. Ears are
   * cut off sound polygons only: off others the library may cut without end. Points that rounding
   * has set beside each other leave no ear to cut; there one of them goes.
   */
  public static Geometry of(Polygon polygon) {
    return ofSound(sound(polygon));
  }

  /** The polygon, or where it crosses itself, all that it encloses. */
  public static Geometry sound(Polygon polygon) {
    return polygon.isValid() ? polygon : GeometryFixer.fix(polygon);
  }

  /** The triangles of what is known not to cross itself. */
  static Geometry ofSound(Geometry sound) {
    try {
      return PolygonTriangulator.triangulate(sound);
    } catch (IllegalStateException e) {
      return PolygonTriangulator.triangulate(DouglasPeuckerSimplifier.simplify(sound, ROUNDING));
    }
  }
}
