package org.coatrun.testmodels.section;

/** A solid round bar. */
public record Round(String name, double diameter) implements Section {

  @Override
  public double area() {
    return Math.PI * diameter * diameter / 4;
  }

  @Override
  public double perimeter() {
    return Math.PI * diameter;
  }

  @Override
  public double innerPerimeter() {
    return 0;
  }

  @Override
  public double depth() {
    return diameter;
  }
}
