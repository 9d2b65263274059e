package org.coatrun.geometry.frame;

import java.util.List;
import org.coatrun.shared.shape.Vec3;

/**
 * The smallest box about a member whose first axis runs along it.
 *
 * @param along unit vector along the member
 * @param across unit vector across it
 * @param up unit vector that completes the right-handed frame
 * @param halfLength half its extent along, in metres; the two others likewise
 */
public record OrientedBox(
    Vec3 centre,
    Vec3 along,
    Vec3 across,
    Vec3 up,
    double halfLength,
    double halfWidth,
    double halfHeight) {

  /**
   * The box about points.
   *
   * @param points x, y, z of each in turn, in as many lists as it takes
   * @param along direction of the member, any length but zero
   * @param acrossHint rough direction across; what runs along is taken off
   */
  static OrientedBox of(List<double[]> points, Vec3 along, Vec3 acrossHint) {
    Vec3 a = along.unit();
    Vec3 rest = acrossHint.minus(a.times(acrossHint.dot(a)));
    Vec3 b = rest.length() < 1e-9 ? a.anyPerpendicular() : rest.unit();
    Vec3 c = a.cross(b);
    double[] from = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    double[] to = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    for (double[] list : points) {
      for (int v = 0; v < list.length; v += 3) {
        Vec3 p = new Vec3(list[v], list[v + 1], list[v + 2]);
        double[] q = {p.dot(a), p.dot(b), p.dot(c)};
        for (int i = 0; i < 3; i++) {
          from[i] = Math.min(from[i], q[i]);
          to[i] = Math.max(to[i], q[i]);
        }
      }
    }
    Vec3 centre =
        a.times((from[0] + to[0]) / 2)
            .plus(b.times((from[1] + to[1]) / 2))
            .plus(c.times((from[2] + to[2]) / 2));
    return new OrientedBox(
        centre, a, b, c, (to[0] - from[0]) / 2, (to[1] - from[1]) / 2, (to[2] - from[2]) / 2);
  }

  /** The same box somewhere else. */
  OrientedBox moved(Vec3 by) {
    return new OrientedBox(centre.plus(by), along, across, up, halfLength, halfWidth, halfHeight);
  }

  double length() {
    return 2 * halfLength;
  }

  /** The middle of its far (+1) or near (-1) end face. */
  Vec3 end(int sign) {
    return centre.plus(along.times(sign * halfLength));
  }

  /** A flat box at one end that reaches {@code beyond} past it and as far back. */
  OrientedBox endZone(int sign, double beyond) {
    return new OrientedBox(end(sign), along, across, up, beyond, halfWidth, halfHeight);
  }

  /** How upright it stands: the sine of its angle from the horizontal, 0 to 1. */
  double uprightness() {
    return Math.abs(along.z());
  }

  /** Half the extent of its shadow on an axis. */
  double reach(Vec3 axis) {
    return reach(axis.x(), axis.y(), axis.z());
  }

  private double reach(double x, double y, double z) {
    return halfLength * Math.abs(dot(along, x, y, z))
        + halfWidth * Math.abs(dot(across, x, y, z))
        + halfHeight * Math.abs(dot(up, x, y, z));
  }

  /**
   * The widest gap that a separating axis shows between the two boxes; zero or less where they
   * meet. Never more than the true distance, and equal to it where faces face each other.
   */
  double gapTo(OrientedBox other) {
    return gapTo(other, Double.POSITIVE_INFINITY);
  }

  /** Whether {@link #gapTo} is no more than some gap; most boxes that are apart show it early. */
  boolean isWithin(double gap, OrientedBox other) {
    double far = radius() + other.radius() + gap;
    Vec3 between = other.centre.minus(centre);
    return between.dot(between) <= far * far && gapTo(other, gap) <= gap;
  }

  /** From its centre to a corner. */
  private double radius() {
    return Math.sqrt(halfLength * halfLength + halfWidth * halfWidth + halfHeight * halfHeight);
  }

  /** The widest gap, or the first ones that are more than enough. */
  private double gapTo(OrientedBox other, double enough) {
    Vec3 between = other.centre.minus(centre);
    double gap = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < 3; i++) {
      gap = Math.max(gap, gapOn(axis(i), between, other));
      gap = Math.max(gap, gapOn(other.axis(i), between, other));
    }
    for (int i = 0; i < 3 && !(gap > enough); i++) {
      for (int j = 0; j < 3; j++) {
        gap = Math.max(gap, gapOnEdges(axis(i), other.axis(j), between, other));
      }
    }
    return gap;
  }

  private Vec3 axis(int i) {
    return i == 0 ? along : i == 1 ? across : up;
  }

  private double gapOn(Vec3 axis, Vec3 between, OrientedBox other) {
    return gapOn(axis.x(), axis.y(), axis.z(), between, other);
  }

  /** The gap on the axis square to two edges; none where they are parallel. */
  private double gapOnEdges(Vec3 a, Vec3 b, Vec3 between, OrientedBox other) {
    double x = a.y() * b.z() - a.z() * b.y();
    double y = a.z() * b.x() - a.x() * b.z();
    double z = a.x() * b.y() - a.y() * b.x();
    double length = Math.sqrt(x * x + y * y + z * z);
    if (!(length > 1e-6)) {
      return Double.NEGATIVE_INFINITY;
    }
    double k = 1 / length;
    return gapOn(k * x, k * y, k * z, between, other);
  }

  private double gapOn(double x, double y, double z, Vec3 between, OrientedBox other) {
    return Math.abs(dot(between, x, y, z)) - reach(x, y, z) - other.reach(x, y, z);
  }

  private static double dot(Vec3 v, double x, double y, double z) {
    return v.x() * x + v.y() * y + v.z() * z;
  }
}
