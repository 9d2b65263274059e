package org.coatrun.testmodels.shape;

/**
 * A right-handed place: an origin in metres and two of its three axes, of length one.
 *
 * @param x the first axis
 * @param z the third axis, square to the first
 */
public record Frame(Vec3 origin, Vec3 x, Vec3 z) {
  public static final Frame WORLD = new Frame(Vec3.ZERO, Vec3.X, Vec3.Z);

  /** A frame with the world's axes. */
  public static Frame at(double x, double y, double z) {
    return new Frame(new Vec3(x, y, z), Vec3.X, Vec3.Z);
  }

  /**
   * A frame along a member: z runs from start to end and y is as near to {@code up} as can be.
   *
   * @throws IllegalArgumentException if the member runs along {@code up}
   */
  public static Frame along(Vec3 start, Vec3 end, Vec3 up) {
    Vec3 axis = end.minus(start).unit();
    Vec3 side = up.cross(axis);
    if (side.length() < 1e-9) {
      throw new IllegalArgumentException("A member along " + up + " needs another up");
    }
    return new Frame(start, side.unit(), axis);
  }

  /** Returns the second axis. */
  public Vec3 y() {
    return z.cross(x);
  }

  /** Returns a point given in this frame, in the frame around it. */
  public Vec3 point(double px, double py, double pz) {
    return origin.plus(x.times(px)).plus(y().times(py)).plus(z.times(pz));
  }

  /** Returns this frame, moved. */
  public Frame moved(Vec3 by) {
    return new Frame(origin.plus(by), x, z);
  }
}
