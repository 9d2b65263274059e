package org.coatrun.cli.page;

import org.coatrun.shared.shape.Vec3;

/**
 * A box around points: along the axis in which they spread most, where that box has less surface
 * than the one along x, y and z. So a slanting bar stays a bar.
 */
final class PlainBox {

  /** Enough for the direction in which a bar runs, whatever it began with. */
  private static final int STEPS = 60;

  private final double[] points;

  private PlainBox(double[] points) {
    this.points = points;
  }

  /**
   * Its corners, x before y before z of its own axes.
   *
   * @param points x, y, z each, at least one
   * @return x, y, z of eight corners
   */
  static double[] around(double[] points) {
    var box = new PlainBox(points);
    Bounds level = box.along(Vec3.X, Vec3.Y, Vec3.Z);
    Vec3 spread = box.spread();
    Vec3 aside = spread.anyPerpendicular();
    Bounds slanting = box.along(spread, aside, spread.cross(aside));
    return (slanting.area() < 0.99 * level.area() ? slanting : level).corners();
  }

  private Bounds along(Vec3 x, Vec3 y, Vec3 z) {
    Vec3[] axes = {x, y, z};
    double[] low = new double[3];
    double[] high = new double[3];
    for (int k = 0; k < 3; k++) {
      low[k] = Double.POSITIVE_INFINITY;
      high[k] = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < points.length; i += 3) {
        double at = point(i).dot(axes[k]);
        low[k] = Math.min(low[k], at);
        high[k] = Math.max(high[k], at);
      }
    }
    return new Bounds(axes, low, high);
  }

  /** The first principal axis, by power iteration. */
  private Vec3 spread() {
    Vec3 sum = Vec3.ZERO;
    for (int i = 0; i < points.length; i += 3) {
      sum = sum.plus(point(i));
    }
    Vec3 middle = sum.times(3.0 / points.length);
    Vec3[] rows = {Vec3.ZERO, Vec3.ZERO, Vec3.ZERO};
    for (int i = 0; i < points.length; i += 3) {
      Vec3 p = point(i).minus(middle);
      rows[0] = rows[0].plus(p.times(p.x()));
      rows[1] = rows[1].plus(p.times(p.y()));
      rows[2] = rows[2].plus(p.times(p.z()));
    }
    Vec3 axis = new Vec3(0.6, 0.5, 0.62);
    for (int step = 0; step < STEPS; step++) {
      Vec3 next = new Vec3(rows[0].dot(axis), rows[1].dot(axis), rows[2].dot(axis));
      if (next.length() == 0) {
        return Vec3.X;
      }
      axis = next.unit();
    }
    return axis;
  }

  private Vec3 point(int i) {
    return new Vec3(points[i], points[i + 1], points[i + 2]);
  }

  /** Least and greatest along three axes square to each other. */
  private record Bounds(Vec3[] axes, double[] low, double[] high) {

    double area() {
      double x = high[0] - low[0];
      double y = high[1] - low[1];
      double z = high[2] - low[2];
      return 2 * (x * y + y * z + z * x);
    }

    double[] corners() {
      double[] corners = new double[24];
      for (int v = 0; v < 8; v++) {
        Vec3 at =
            axes[0]
                .times(v % 2 == 0 ? low[0] : high[0])
                .plus(axes[1].times(v / 2 % 2 == 0 ? low[1] : high[1]))
                .plus(axes[2].times(v / 4 == 0 ? low[2] : high[2]));
        corners[3 * v] = at.x();
        corners[3 * v + 1] = at.y();
        corners[3 * v + 2] = at.z();
      }
      return corners;
    }
  }
}
