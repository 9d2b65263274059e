package org.coatrun.testmodels.section;

/** A round hollow section with its outer diameter and wall. */
public record RoundHollow(String name, double diameter, double wall) implements Section {

  @Override
  public double area() {
    return Math.PI * (diameter - wall) * wall;
  }

  @Override
  public double perimeter() {
    return Math.PI * diameter;
  }

  @Override
  public double innerPerimeter() {
    return Math.PI * (diameter - 2 * wall);
  }

  @Override
  public double depth() {
    return diameter;
  }
}
