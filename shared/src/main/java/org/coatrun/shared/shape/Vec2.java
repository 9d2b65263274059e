package org.coatrun.shared.shape;

/** A point or direction in a plane, in metres. */
public record Vec2(double x, double y) {

  public static final Vec2 ZERO = new Vec2(0, 0);

  public Vec2 plus(Vec2 o) {
    return new Vec2(x + o.x, y + o.y);
  }

  public Vec2 minus(Vec2 o) {
    return new Vec2(x - o.x, y - o.y);
  }

  public Vec2 times(double k) {
    return new Vec2(k * x, k * y);
  }

  public double dot(Vec2 o) {
    return x * o.x + y * o.y;
  }

  /** The z of the cross product: positive where {@code o} lies to the left. */
  public double cross(Vec2 o) {
    return x * o.y - y * o.x;
  }

  public double length() {
    return Math.hypot(x, y);
  }

  public double distance(Vec2 o) {
    return Math.hypot(x - o.x, y - o.y);
  }

  /** Same direction, length one; the zero vector stays zero. */
  public Vec2 unit() {
    double l = length();
    return l == 0 ? this : times(1 / l);
  }

  /** A quarter turn to the left. */
  public Vec2 left() {
    return new Vec2(-y, x);
  }

  // Written out: see the conventions in DEVELOPERS.md.

  @Override
  public boolean equals(Object other) {
    return other instanceof Vec2 o && Double.compare(x, o.x) == 0 && Double.compare(y, o.y) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(x) + Double.hashCode(y);
  }
}
