package org.coatrun.testmodels.section;

/**
 * An angle, centred on its bounding box, the corner at the lower left.
 *
 * @param depth the leg along y
 * @param width the leg along x
 * @param thickness of both legs
 * @param fillet radius in the inner corner; the toes are square
 */
public record Angle(String name, double depth, double width, double thickness, double fillet)
    implements Section {

  @Override
  public double area() {
    double inner = (1 - Math.PI / 4) * fillet * fillet;
    return thickness * (depth + width - thickness) + inner;
  }

  @Override
  public double perimeter() {
    return 2 * (depth + width) - (2 - Math.PI / 2) * fillet;
  }

  @Override
  public double innerPerimeter() {
    return 0;
  }
}
