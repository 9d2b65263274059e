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
    return halfLength * Math.abs(along.dot(axis))
        + halfWidth * Math.abs(across.dot(axis))
        + halfHeight * Math.abs(up.dot(axis));
  }

  /**
   * The widest gap that a separating axis shows between the two boxes; zero or less where they
   * meet. Never more than the true distance, and equal to it where faces face each other.
   */
  double gapTo(OrientedBox other) {
    Vec3 between = other.centre.minus(centre);
    double gap = Double.NEGATIVE_INFINITY;
    Vec3[] mine = {along, across, up};
    Vec3[] theirs = {other.along, other.across, other.up};
    for (int i = 0; i < 3; i++) {
      gap = Math.max(gap, gapOn(mine[i], between, other));
      gap = Math.max(gap, gapOn(theirs[i], between, other));
      for (int j = 0; j < 3; j++) {
        Vec3 edge = mine[i].cross(theirs[j]);
        if (edge.length() > 1e-6) {
          gap = Math.max(gap, gapOn(edge.unit(), between, other));
        }
      }
    }
    return gap;
  }

  private double gapOn(Vec3 axis, Vec3 between, OrientedBox other) {
    return Math.abs(between.dot(axis)) - reach(axis) - other.reach(axis);
  }
}
