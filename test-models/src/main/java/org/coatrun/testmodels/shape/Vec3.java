package org.coatrun.testmodels.shape;

/** A point or vector in space, in metres. */
public record Vec3(double x, double y, double z) {
  public static final Vec3 ZERO = new Vec3(0, 0, 0);
  public static final Vec3 X = new Vec3(1, 0, 0);
  public static final Vec3 Y = new Vec3(0, 1, 0);
  public static final Vec3 Z = new Vec3(0, 0, 1);

  /** Returns this plus another. */
  public Vec3 plus(Vec3 o) {
    return new Vec3(x + o.x, y + o.y, z + o.z);
  }

  /** Returns this less another. */
  public Vec3 minus(Vec3 o) {
    return new Vec3(x - o.x, y - o.y, z - o.z);
  }

  /** Returns this, longer by a factor. */
  public Vec3 times(double k) {
    return new Vec3(k * x, k * y, k * z);
  }

  /** Returns the scalar product. */
  public double dot(Vec3 o) {
    return x * o.x + y * o.y + z * o.z;
  }

  /** Returns the vector product. */
  public Vec3 cross(Vec3 o) {
    return new Vec3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  /** Returns the length in metres. */
  public double length() {
    return Math.sqrt(dot(this));
  }

  /** Returns the vector of length one. */
  public Vec3 unit() {
    return times(1 / length());
  }
}
