package org.coatrun.geometry.solid;

import org.coatrun.shared.shape.Vec3;

/**
 * The plane {@code n · p = offset} with unit normal {@code n}; for a face the normal points out of
 * the solid. Carries a fixed right-handed frame (u, v, n), so that every polygon in one plane is
 * drawn on the same axes.
 */
public final class Plane {

  private final double nx;
  private final double ny;
  private final double nz;
  private final double offset;
  private final double ux;
  private final double uy;
  private final double uz;
  private final double vx;
  private final double vy;
  private final double vz;

  private Plane(double nx, double ny, double nz, double offset) {
    this.nx = nx;
    this.ny = ny;
    this.nz = nz;
    this.offset = offset;
    double ax = Math.abs(nx) < 0.9 ? 0 : nz;
    double ay = Math.abs(nx) < 0.9 ? -nz : 0;
    double az = Math.abs(nx) < 0.9 ? ny : -nx;
    double l = Math.sqrt(ax * ax + ay * ay + az * az);
    // v = x̂ × n or ŷ × n, whichever is safe; u = v × n closes the frame
    this.vx = ax / l;
    this.vy = ay / l;
    this.vz = az / l;
    this.ux = vy * nz - vz * ny;
    this.uy = vz * nx - vx * nz;
    this.uz = vx * ny - vy * nx;
  }

  /**
   * The plane through a point, square to a direction of any length.
   *
   * @throws IllegalArgumentException where the direction has no length or is not finite
   */
  public static Plane through(
      double px, double py, double pz, double dirX, double dirY, double dirZ) {
    double l = Math.sqrt(dirX * dirX + dirY * dirY + dirZ * dirZ);
    if (!(l > 0) || !Double.isFinite(l)) {
      throw new IllegalArgumentException("a plane needs a direction with a length");
    }
    double x = dirX / l;
    double y = dirY / l;
    double z = dirZ / l;
    return new Plane(x, y, z, x * px + y * py + z * pz);
  }

  /** The same plane seen from behind. */
  public Plane reversed() {
    return new Plane(-nx, -ny, -nz, -offset);
  }

  /** The plane {@code by} further along its normal. */
  public Plane moved(double by) {
    return new Plane(nx, ny, nz, offset + by);
  }

  /** The plane of what lies in this one, moved; its axes stay. */
  public Plane moved(Vec3 by) {
    return moved(along(by));
  }

  /** How far a vector leads along the normal. */
  public double along(Vec3 way) {
    return nx * way.x() + ny * way.y() + nz * way.z();
  }

  /** Height of a point above the plane, along the normal. */
  public double height(double x, double y, double z) {
    return nx * x + ny * y + nz * z - offset;
  }

  /** First coordinate of a point's foot on the plane's own axes. */
  public double u(double x, double y, double z) {
    return ux * x + uy * y + uz * z;
  }

  /** Second coordinate of a point's foot on the plane's own axes. */
  public double v(double x, double y, double z) {
    return vx * x + vy * y + vz * z;
  }

  /** x of the point of the plane with the given coordinates. */
  public double x(double u, double v) {
    return ux * u + vx * v + nx * offset;
  }

  /** y of the point of the plane with the given coordinates. */
  public double y(double u, double v) {
    return uy * u + vy * v + ny * offset;
  }

  /** z of the point of the plane with the given coordinates. */
  public double z(double u, double v) {
    return uz * u + vz * v + nz * offset;
  }

  public double nx() {
    return nx;
  }

  public double ny() {
    return ny;
  }

  public double nz() {
    return nz;
  }

  public double offset() {
    return offset;
  }

  public double ux() {
    return ux;
  }

  public double uy() {
    return uy;
  }

  public double uz() {
    return uz;
  }

  public double vx() {
    return vx;
  }

  public double vy() {
    return vy;
  }

  public double vz() {
    return vz;
  }

  /** Cosine of the angle between both normals. */
  public double dot(Plane o) {
    return nx * o.nx + ny * o.ny + nz * o.nz;
  }

  @Override
  public String toString() {
    return "plane n=(" + nx + ", " + ny + ", " + nz + ") offset=" + offset;
  }
}
