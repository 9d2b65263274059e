package org.coatrun.testmodels.section;

/** A solid rectangle, centred: plates, timber, concrete. */
public record Rectangle(String name, double width, double depth) implements Section {

  @Override
  public double area() {
    return width * depth;
  }

  @Override
  public double perimeter() {
    return 2 * (width + depth);
  }

  @Override
  public double innerPerimeter() {
    return 0;
  }
}
