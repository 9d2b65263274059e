package org.coatrun.geometry.exposure;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.geometry.solid.FaceLabel;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.geometry.solid.Tolerance;
import org.coatrun.shared.shape.Vec3;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Faces of a mesh that bound the hollow of a tube: those that a slice across the member meets on a
 * hole of its outline.
 */
final class HollowFaces {

  private static final double ON = 1e-5;
  private static final double[] STATIONS = {0.5, 0.29, 0.73, 0.05, 0.95};

  private record Ring(Plane plane, Coordinate[] points) {}

  private final List<Ring> rings;
  private final Axis axis;

  private HollowFaces(Axis axis, List<Ring> rings) {
    this.axis = axis;
    this.rings = rings;
  }

  static HollowFaces of(Form form) {
    List<Ring> rings = new ArrayList<>();
    Axis axis = form.axis().orElse(null);
    if (axis != null && hasMesh(form)) {
      Kernel kernel = new Kernel(Tolerance.DEFAULT);
      for (double t : STATIONS) {
        Plane plane = axis.at(axis.low() + t * axis.length());
        Geometry g = form.originals().fill(kernel, plane, 1, form.bounds(), null);
        for (int i = 0; i < g.getNumGeometries(); i++) {
          if (g.getGeometryN(i) instanceof Polygon p) {
            for (int k = 0; k < p.getNumInteriorRing(); k++) {
              rings.add(new Ring(plane, p.getInteriorRingN(k).getCoordinates()));
            }
          }
        }
      }
    }
    return new HollowFaces(axis, rings);
  }

  private static boolean hasMesh(Form form) {
    for (Patch p : form.boundary().patches()) {
      if (p.label().kind() == FaceLabel.Kind.MESH) {
        return true;
      }
    }
    return false;
  }

  boolean holds(Patch p) {
    if (rings.isEmpty()) {
      return false;
    }
    double[] range = Axis.range(p, axis.direction());
    for (Ring r : rings) {
      double at = r.plane.offset();
      if (range[0] < at && at < range[1] && meets(p, r)) {
        return true;
      }
    }
    return false;
  }

  /** Whether some piece of the ring lies in the patch's plane and within its box. */
  private static boolean meets(Patch p, Ring r) {
    for (int i = 1; i < r.points.length; i++) {
      Coordinate a = r.points[i - 1];
      Coordinate b = r.points[i];
      Vec3 m = at(r.plane, 0.5 * (a.x + b.x), 0.5 * (a.y + b.y));
      if (isOn(p, m) && isNear(p, at(r.plane, a.x, a.y)) && isNear(p, at(r.plane, b.x, b.y))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isNear(Patch p, Vec3 m) {
    return Math.abs(p.plane().height(m.x(), m.y(), m.z())) < ON;
  }

  private static boolean isOn(Patch p, Vec3 m) {
    return isNear(p, m)
        && m.x() > p.bounds().minX() - ON
        && m.x() < p.bounds().maxX() + ON
        && m.y() > p.bounds().minY() - ON
        && m.y() < p.bounds().maxY() + ON
        && m.z() > p.bounds().minZ() - ON
        && m.z() < p.bounds().maxZ() + ON;
  }

  private static Vec3 at(Plane p, double u, double v) {
    return new Vec3(p.x(u, v), p.y(u, v), p.z(u, v));
  }
}
