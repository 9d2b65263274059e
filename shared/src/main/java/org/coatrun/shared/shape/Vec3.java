package org.coatrun.shared.shape;

/** A point or direction in space, in metres. */
public record Vec3(double x, double y, double z) {

  public static final Vec3 ZERO = new Vec3(0, 0, 0);
  public static final Vec3 X = new Vec3(1, 0, 0);
  public static final Vec3 Y = new Vec3(0, 1, 0);
  public static final Vec3 Z = new Vec3(0, 0, 1);

  public Vec3 plus(Vec3 o) {
    return new Vec3(x + o.x, y + o.y, z + o.z);
  }

  public Vec3 minus(Vec3 o) {
    return new Vec3(x - o.x, y - o.y, z - o.z);
  }

  public Vec3 times(double k) {
    return new Vec3(k * x, k * y, k * z);
  }

  public double dot(Vec3 o) {
    return x * o.x + y * o.y + z * o.z;
  }

  public Vec3 cross(Vec3 o) {
    return new Vec3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  public double length() {
    return Math.sqrt(dot(this));
  }

  public double distance(Vec3 o) {
    return minus(o).length();
  }

  /** Same direction, length one; the zero vector stays zero. */
  public Vec3 unit() {
    double l = length();
    return l == 0 ? this : times(1 / l);
  }

  /** Some unit vector square to this one; always the same for the same vector. */
  public Vec3 anyPerpendicular() {
    Vec3 away = Math.abs(x) < 0.9 * length() ? X : Y;
    return cross(away).unit();
  }

  // Written out: see the conventions in DEVELOPERS.md.

  @Override
  public boolean equals(Object other) {
    return other instanceof Vec3 o
        && Double.compare(x, o.x) == 0
        && Double.compare(y, o.y) == 0
        && Double.compare(z, o.z) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Double.hashCode(x) + Double.hashCode(y)) + Double.hashCode(z);
  }
}
