package org.coatrun.shared.shape;

/**
 * An affine map of a plane: {@code p ↦ origin + p.x · x + p.y · y}. Scale, shear and reflection are
 * all allowed.
 */
public record Transform2(Vec2 x, Vec2 y, Vec2 origin) {

  public static final Transform2 IDENTITY =
      new Transform2(new Vec2(1, 0), new Vec2(0, 1), Vec2.ZERO);

  /** The mirror image about the y axis. */
  public static final Transform2 MIRROR_Y =
      new Transform2(new Vec2(-1, 0), new Vec2(0, 1), Vec2.ZERO);

  /** A turn that takes the x axis to the unit vector {@code xAxis}, then a shift to the origin. */
  public static Transform2 frame(Vec2 origin, Vec2 xAxis) {
    Vec2 x = xAxis.unit();
    return new Transform2(x, x.left(), origin);
  }

  public static Transform2 translation(Vec2 by) {
    return new Transform2(new Vec2(1, 0), new Vec2(0, 1), by);
  }

  public Vec2 apply(Vec2 point) {
    return origin.plus(applyVector(point));
  }

  /** Maps a direction: no shift. */
  public Vec2 applyVector(Vec2 v) {
    return x.times(v.x()).plus(y.times(v.y()));
  }

  /** The map that does {@code inner} first and then this one. */
  public Transform2 after(Transform2 inner) {
    return new Transform2(applyVector(inner.x), applyVector(inner.y), apply(inner.origin));
  }

  /** By how much areas grow; negative for a reflection. */
  public double determinant() {
    return x.cross(y);
  }
}
