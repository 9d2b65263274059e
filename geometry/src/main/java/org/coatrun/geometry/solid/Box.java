package org.coatrun.geometry.solid;

import org.coatrun.shared.shape.Vec3;

/**
 * A box along the axes, in metres; empty where a minimum is above its maximum.
 *
 * <p>Boxes that touch overlap.
 */
public record Box(double minX, double minY, double minZ, double maxX, double maxY, double maxZ) {

  /** The box that holds nothing. */
  public static final Box EMPTY =
      new Box(
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.NEGATIVE_INFINITY);

  /** Whether both share a point when this one grows by {@code gap} on all sides. */
  public boolean overlaps(Box o, double gap) {
    return minX - gap <= o.maxX
        && o.minX <= maxX + gap
        && minY - gap <= o.maxY
        && o.minY <= maxY + gap
        && minZ - gap <= o.maxZ
        && o.minZ <= maxZ + gap;
  }

  /** This box, larger by {@code gap} on all sides. */
  public Box grown(double gap) {
    return new Box(minX - gap, minY - gap, minZ - gap, maxX + gap, maxY + gap, maxZ + gap);
  }

  /** This box, moved. */
  public Box moved(Vec3 by) {
    return new Box(
        minX + by.x(), minY + by.y(), minZ + by.z(), maxX + by.x(), maxY + by.y(), maxZ + by.z());
  }

  /** The smallest box about both. */
  public Box plus(Box o) {
    return new Box(
        Math.min(minX, o.minX),
        Math.min(minY, o.minY),
        Math.min(minZ, o.minZ),
        Math.max(maxX, o.maxX),
        Math.max(maxY, o.maxY),
        Math.max(maxZ, o.maxZ));
  }

  /** What both share; may be empty. */
  public Box common(Box o) {
    return new Box(
        Math.max(minX, o.minX),
        Math.max(minY, o.minY),
        Math.max(minZ, o.minZ),
        Math.min(maxX, o.maxX),
        Math.min(maxY, o.maxY),
        Math.min(maxZ, o.maxZ));
  }

  /** Whether nothing is inside. */
  public boolean isEmpty() {
    return minX > maxX || minY > maxY || minZ > maxZ;
  }

  /** Length of the diagonal; zero where empty. */
  public double diagonal() {
    if (isEmpty()) {
      return 0;
    }
    double x = maxX - minX;
    double y = maxY - minY;
    double z = maxZ - minZ;
    return Math.sqrt(x * x + y * y + z * z);
  }

  public double centreX() {
    return 0.5 * (minX + maxX);
  }

  public double centreY() {
    return 0.5 * (minY + maxY);
  }

  public double centreZ() {
    return 0.5 * (minZ + maxZ);
  }
}
