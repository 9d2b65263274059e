package org.coatrun.testmodels.section;

/**
 * A rectangular hollow section, centred.
 *
 * @param depth height along y
 * @param width width along x
 * @param wall wall thickness
 * @param outerRadius corner radius outside; the inner one is less by the wall
 */
public record RectangularHollow(
    String name, double depth, double width, double wall, double outerRadius) implements Section {

  /** Returns the corner radius inside. */
  public double innerRadius() {
    return Math.max(0, outerRadius - wall);
  }

  @Override
  public double area() {
    return filled(0, outerRadius) - filled(wall, innerRadius());
  }

  @Override
  public double perimeter() {
    return around(0, outerRadius);
  }

  @Override
  public double innerPerimeter() {
    return around(wall, innerRadius());
  }

  private double filled(double inset, double radius) {
    return (depth - 2 * inset) * (width - 2 * inset) - (4 - Math.PI) * radius * radius;
  }

  private double around(double inset, double radius) {
    return 2 * (depth + width - 4 * inset) - (8 - 2 * Math.PI) * radius;
  }
}
