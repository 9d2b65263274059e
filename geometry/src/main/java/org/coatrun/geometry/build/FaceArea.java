package org.coatrun.geometry.build;

import org.coatrun.shared.shape.Vec3;
import org.locationtech.jts.geom.Coordinate;

/**
 * What a triangle of a curved face's parameters measures on the surface: its area, and what it adds
 * to thrice the volume behind it. Seven points, exact to degree five (Radon 1948; Abramowitz and
 * Stegun, Handbook of Mathematical Functions, 25.4.63).
 *
 * @param area m²
 * @param flux ∫ x · n dA, m³
 */
record FaceArea(double area, double flux) {

  private static final double ROOT = Math.sqrt(15);
  private static final double NEAR = (6 - ROOT) / 21;
  private static final double FAR = (6 + ROOT) / 21;
  private static final double[][] POINTS = {
    {1 / 3.0, 1 / 3.0, 9 / 40.0},
    {NEAR, NEAR, (155 - ROOT) / 1200},
    {1 - 2 * NEAR, NEAR, (155 - ROOT) / 1200},
    {NEAR, 1 - 2 * NEAR, (155 - ROOT) / 1200},
    {FAR, FAR, (155 + ROOT) / 1200},
    {1 - 2 * FAR, FAR, (155 + ROOT) / 1200},
    {FAR, 1 - 2 * FAR, (155 + ROOT) / 1200}
  };
  private static final double STEP = 1e-6;

  static final FaceArea NONE = new FaceArea(0, 0);

  FaceArea plus(FaceArea o) {
    return new FaceArea(area + o.area, flux + o.flux);
  }

  /** Of the triangle a, b, c of u and v, whichever way it turns. */
  static FaceArea of(FaceMap map, Coordinate a, Coordinate b, Coordinate c) {
    double flat = 0.5 * Math.abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
    double area = 0;
    double flux = 0;
    for (double[] p : POINTS) {
      double u = a.x + p[0] * (b.x - a.x) + p[1] * (c.x - a.x);
      double v = a.y + p[0] * (b.y - a.y) + p[1] * (c.y - a.y);
      Vec3 n = along(map, u, v, true).cross(along(map, u, v, false));
      area += p[2] * n.length();
      flux += p[2] * n.dot(map.at(u, v));
    }
    return new FaceArea(flat * area, flat * flux);
  }

  /** The derivative of a surface by u or by v; one-sided where the surface ends. */
  static Vec3 along(FaceMap map, double u, double v, boolean byU) {
    Vec3 high = byU ? map.at(u + STEP, v) : map.at(u, v + STEP);
    Vec3 low = byU ? map.at(u - STEP, v) : map.at(u, v - STEP);
    Vec3 here = map.at(u, v);
    boolean both = high.distance(here) > 0 && low.distance(here) > 0;
    return high.minus(low).times(both ? 0.5 / STEP : 1 / STEP);
  }
}
