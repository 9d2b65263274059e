package org.coatrun.shared.shape;

/**
 * An affine map of space: {@code p ↦ origin + p.x · x + p.y · y + p.z · z}. Scale, shear and
 * reflection are all allowed; placements are the rigid ones.
 */
public record Transform3(Vec3 x, Vec3 y, Vec3 z, Vec3 origin) {

  public static final Transform3 IDENTITY = new Transform3(Vec3.X, Vec3.Y, Vec3.Z, Vec3.ZERO);

  /**
   * A right-handed rigid frame.
   *
   * @param zAxis direction of the local z axis, any length but zero
   * @param xHint rough direction of the local x axis; what is along z is taken off; where nothing
   *     is left, a fixed perpendicular stands in
   */
  public static Transform3 frame(Vec3 origin, Vec3 zAxis, Vec3 xHint) {
    Vec3 z = zAxis.unit();
    Vec3 x = xHint.minus(z.times(xHint.dot(z)));
    x = x.length() < 1e-12 * Math.max(1, xHint.length()) ? z.anyPerpendicular() : x.unit();
    return new Transform3(x, z.cross(x), z, origin);
  }

  public static Transform3 translation(Vec3 by) {
    return new Transform3(Vec3.X, Vec3.Y, Vec3.Z, by);
  }

  /** The same axes with another origin. */
  public Transform3 about(Vec3 other) {
    return new Transform3(x, y, z, other);
  }

  public Vec3 apply(Vec3 point) {
    return new Vec3(
        origin.x() + point.x() * x.x() + point.y() * y.x() + point.z() * z.x(),
        origin.y() + point.x() * x.y() + point.y() * y.y() + point.z() * z.y(),
        origin.z() + point.x() * x.z() + point.y() * y.z() + point.z() * z.z());
  }

  /** Maps a direction: no shift. */
  public Vec3 applyVector(Vec3 v) {
    return new Vec3(
        v.x() * x.x() + v.y() * y.x() + v.z() * z.x(),
        v.x() * x.y() + v.y() * y.y() + v.z() * z.y(),
        v.x() * x.z() + v.y() * y.z() + v.z() * z.z());
  }

  /** The map that does {@code inner} first and then this one. */
  public Transform3 after(Transform3 inner) {
    return new Transform3(
        applyVector(inner.x), applyVector(inner.y), applyVector(inner.z), apply(inner.origin));
  }

  /** By how much volumes grow; negative for a reflection. */
  public double determinant() {
    return x.cross(y).dot(z);
  }

  /** Whether lengths and angles stay as they are, to {@code 1e-9}; a reflection is rigid too. */
  public boolean isRigid() {
    double eps = 1e-9;
    return Math.abs(x.dot(x) - 1) < eps
        && Math.abs(y.dot(y) - 1) < eps
        && Math.abs(z.dot(z) - 1) < eps
        && Math.abs(x.dot(y)) < eps
        && Math.abs(y.dot(z)) < eps
        && Math.abs(z.dot(x)) < eps;
  }

  /**
   * The map back.
   *
   * @throws ArithmeticException where the map flattens space
   */
  public Transform3 inverse() {
    double d = determinant();
    if (d == 0) {
      throw new ArithmeticException("a map that flattens space has no way back");
    }
    Vec3 rx = y.cross(z).times(1 / d);
    Vec3 ry = z.cross(x).times(1 / d);
    Vec3 rz = x.cross(y).times(1 / d);
    Vec3 ix = new Vec3(rx.x(), ry.x(), rz.x());
    Vec3 iy = new Vec3(rx.y(), ry.y(), rz.y());
    Vec3 iz = new Vec3(rx.z(), ry.z(), rz.z());
    Vec3 o = new Vec3(-rx.dot(origin), -ry.dot(origin), -rz.dot(origin));
    return new Transform3(ix, iy, iz, o);
  }

  // Written out: see the conventions in DEVELOPERS.md.

  @Override
  public boolean equals(Object other) {
    return other instanceof Transform3 o
        && x.equals(o.x)
        && y.equals(o.y)
        && z.equals(o.z)
        && origin.equals(o.origin);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * (31 * x.hashCode() + y.hashCode()) + z.hashCode()) + origin.hashCode();
  }
}
