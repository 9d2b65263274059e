package org.coatrun.geometry.build;

import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/**
 * A plane turned round an axis.
 *
 * @param frame from the axes in which the axis is given to those asked for
 * @param plane from the profile's plane to the axes in which the axis is given
 * @param point on the axis
 * @param axis unit vector along it
 */
record Turn(Transform3 frame, Transform3 plane, Vec3 point, Vec3 axis) {

  Vec3 direction(Vec2 d, double angle) {
    Vec3 v = plane.applyVector(new Vec3(d.x(), d.y(), 0));
    return frame.applyVector(rotated(v, angle));
  }

  Vec3 speed(Vec2 p, double angle) {
    Vec3 v = plane.apply(new Vec3(p.x(), p.y(), 0)).minus(point);
    return frame.applyVector(axis.cross(rotated(v, angle)));
  }

  /** The plane's map at an angle, distances from the axis multiplied. */
  Transform3 at(double angle, double radial) {
    Vec3 origin = place(Vec3.ZERO, angle, radial);
    Vec3 x = place(Vec3.X, angle, radial).minus(origin);
    Vec3 y = place(Vec3.Y, angle, radial).minus(origin);
    return new Transform3(x, y, x.cross(y), origin);
  }

  private Vec3 place(Vec3 p, double angle, double radial) {
    Vec3 v = rotated(plane.apply(p).minus(point), angle);
    Vec3 along = axis.times(v.dot(axis));
    return frame.apply(point.plus(along).plus(v.minus(along).times(radial)));
  }

  /** Rodrigues' formula. */
  private Vec3 rotated(Vec3 v, double angle) {
    double c = Math.cos(angle);
    Vec3 along = axis.times(v.dot(axis) * (1 - c));
    return v.times(c).plus(axis.cross(v).times(Math.sin(angle))).plus(along);
  }
}
