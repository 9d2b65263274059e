package org.coatrun.geometry.profile;

/** A rectangle along the axes, in metres. */
public record Rectangle2(double minX, double minY, double maxX, double maxY) {

  public double width() {
    return maxX - minX;
  }

  public double height() {
    return maxY - minY;
  }

  /** Length of all four sides. */
  public double perimeter() {
    return 2 * (width() + height());
  }

  public double diagonal() {
    return Math.hypot(width(), height());
  }

  /** The smallest rectangle about both. */
  public Rectangle2 plus(Rectangle2 o) {
    return new Rectangle2(
        Math.min(minX, o.minX),
        Math.min(minY, o.minY),
        Math.max(maxX, o.maxX),
        Math.max(maxY, o.maxY));
  }
}
