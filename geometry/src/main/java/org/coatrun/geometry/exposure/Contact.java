package org.coatrun.geometry.exposure;

import java.util.Optional;
import org.coatrun.geometry.solid.Overlay;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.geometry.solid.Remains;
import org.coatrun.shared.shape.Vec2;
import org.locationtech.jts.geom.Geometry;

/**
 * Whether two patches face each other closely enough to touch, and where.
 *
 * <p>Facing: normals opposite to within a degree (more on curved strips), the distance along the
 * normal no more than the gap either way. Curved strips get the sagitta of their arc on top: the
 * chord lies that far inside the true surface.
 */
final class Contact {

  private static final double ANGLE = Math.toRadians(1);

  /** However curved they are, patches turned from each other by more do not face each other. */
  private static final double FACING = 0.5;

  private static final double PARALLEL = 1 - 1e-10;

  private final double gap;

  Contact(double gap) {
    this.gap = gap;
  }

  double gap() {
    return gap;
  }

  /** Whether two patches are turned to each other, wherever they stand. */
  static boolean areFacing(Patch a, Patch b) {
    double cos = -a.plane().dot(b.plane());
    return cos > FACING && cos >= Math.cos(ANGLE + halfAngle(a) + halfAngle(b));
  }

  /**
   * What b shades of a's plane where it touches what is left of a; empty where it does not.
   *
   * @param b turned to a
   */
  Geometry shade(Patch a, Patch b, Remains left) {
    double cos = -a.plane().dot(b.plane());
    double reach = gap + sagitta(a) + sagitta(b);
    if (cos > PARALLEL) {
      boolean near = Math.abs(a.plane().offset() + b.plane().offset()) <= reach;
      return near ? b.onto(a.plane()) : Overlay.EMPTY;
    }
    if (isBeyond(a, b, reach)) {
      return Overlay.EMPTY;
    }
    Geometry shade = b.onto(a.plane());
    Optional<Vec2> middle = left.middleWithin(shade);
    return middle.isPresent() && Math.abs(height(a.plane(), b.plane(), middle.get())) <= reach
        ? shade
        : Overlay.EMPTY;
  }

  /** Whether b's plane is out of reach of each corner of a on the same side, so of all of it. */
  private static boolean isBeyond(Patch a, Patch b, double reach) {
    double[] xyz = a.corners();
    boolean above = true;
    boolean below = true;
    for (int i = 0; i < xyz.length; i += 3) {
      double height = height(a.plane(), b.plane(), xyz[i], xyz[i + 1], xyz[i + 2]);
      above &= height > reach;
      below &= height < -reach;
    }
    return above || below;
  }

  /** From a point of one plane, given on its own axes, along its normal to another. */
  private static double height(Plane p, Plane q, Vec2 at) {
    return height(p, q, p.x(at.x(), at.y()), p.y(at.x(), at.y()), p.z(at.x(), at.y()));
  }

  /** From a point of one plane along its normal to another. */
  private static double height(Plane p, Plane q, double x, double y, double z) {
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
