package org.coatrun.geometry.exposure;

import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Overlay;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.geometry.solid.Remains;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;

/**
 * Whether two patches face each other closely enough to touch, and where.
 *
 * <p>Facing: normals opposite to within a degree (more on curved strips), the distance along the
 * normal no more than the gap either way. Curved strips get the sagitta of their arc on top: the
 * chord lies that far inside the true surface.
 */
final class Contact {

  private static final double ANGLE = Math.toRadians(1);
  private static final double PARALLEL = 1 - 1e-10;

  private final double gap;

  Contact(double gap) {
    this.gap = gap;
  }

  double gap() {
    return gap;
  }

  /** What b shades of a's plane where it touches what is left of a; empty where it does not. */
  Geometry shade(Patch a, Patch b, Remains left, Kernel kernel) {
    double cos = -a.plane().dot(b.plane());
    double turn = ANGLE + halfAngle(a) + halfAngle(b);
    if (cos < Math.cos(turn)) {
      return Overlay.EMPTY;
    }
    double reach = gap + sagitta(a) + sagitta(b);
    if (cos > PARALLEL && Math.abs(a.plane().offset() + b.plane().offset()) > reach) {
      return Overlay.EMPTY;
    }
    Geometry shade = b.onto(a.plane());
    if (cos > PARALLEL) {
      return shade;
    }
    Geometry shared = kernel.overlay().common(left.rest(), shade);
    return !shared.isEmpty() && Math.abs(height(a, b, shared)) <= reach ? shared : Overlay.EMPTY;
  }

  /** How far b's plane is from a's, along a's normal, at the middle of what they share. */
  private static double height(Patch a, Patch b, Geometry shared) {
    Point c = shared.getCentroid();
    Plane p = a.plane();
    Plane q = b.plane();
    double x = p.x(c.getX(), c.getY());
    double y = p.y(c.getX(), c.getY());
    double z = p.z(c.getX(), c.getY());
    return -q.height(x, y, z) / q.dot(p);
  }

  /** Half the angle that a strip's arc spans: s = (θ/2) / sin(θ/2) gives θ² ≈ 24 (s - 1). */
  static double halfAngle(Patch p) {
    double bulge = p.stretch() - 1;
    return bulge < 1e-9 ? 0 : 0.5 * Math.sqrt(24 * bulge);
  }

  /** r (1 - cos(θ/2)), from the strip's chord and its angle. */
  static double sagitta(Patch p) {
    double half = halfAngle(p);
    return half == 0 ? 0 : 0.5 * p.narrow() * Math.tan(0.5 * half);
  }
}
