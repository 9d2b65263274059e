package org.coatrun.geometry.exposure;

import java.util.List;
import org.coatrun.geometry.solid.Boundary;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.geometry.solid.Solid;
import org.coatrun.shared.shape.Vec3;

/**
 * The direction that a member runs in, and from where to where.
 *
 * @param direction unit vector
 * @param low least coordinate of the body along it
 * @param high greatest coordinate of the body along it
 * @param swept whether the body is one sweep, whose faces tell themselves which are its ends; of a
 *     curved one the sides near its ends turn towards the axis too
 */
public record Axis(Vec3 direction, double low, double high, boolean swept) {

  /** The axis of a body that runs in a known direction. */
  public static Axis along(Vec3 direction, Boundary body) {
    return along(direction, body, false);
  }

  /** The axis of a sweep, from its start to its end. */
  public static Axis ofSweep(Vec3 direction, Boundary body) {
    return along(direction, body, true);
  }

  private static Axis along(Vec3 direction, Boundary body, boolean swept) {
    Vec3 d = direction.unit();
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Patch p : body.patches()) {
      double[] range = range(p, d);
      low = Math.min(low, range[0]);
      high = Math.max(high, range[1]);
    }
    return new Axis(d, low, high, swept);
  }

  /** The direction that the originals run in: the one that their faces turn away from least. */
  public static Vec3 principal(List<Solid> solids) {
    return Principal.direction(solids);
  }

  public double length() {
    return high - low;
  }

  /** The plane across the axis at a coordinate along it. */
  public Plane at(double coordinate) {
    Vec3 p = direction.times(coordinate);
    return Plane.through(p.x(), p.y(), p.z(), direction.x(), direction.y(), direction.z());
  }

  /** Least and greatest coordinate of a patch along a direction. */
  static double[] range(Patch p, Vec3 d) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double[] c = p.corners();
    for (int i = 0; i < c.length; i += 3) {
      double h = d.x() * c[i] + d.y() * c[i + 1] + d.z() * c[i + 2];
      low = Math.min(low, h);
      high = Math.max(high, h);
    }
    return new double[] {low, high};
  }
}
