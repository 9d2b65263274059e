package org.coatrun.testmodels.section;

/** Two equal angles back to back, the vertical legs apart by a gap. */
public record DoubleAngle(String name, Angle angle, double gap) implements Section {

  @Override
  public double area() {
    return 2 * angle.area();
  }

  @Override
  public double perimeter() {
    return 2 * angle.perimeter();
  }

  @Override
  public double innerPerimeter() {
    return 0;
  }

  @Override
  public double depth() {
    return angle.depth();
  }
}
