package org.coatrun.testmodels.section;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.testmodels.shape.Vec2;

/** Any closed outline of straight lines, anticlockwise, the first corner given once. */
public record Outline(String name, List<Vec2> corners) implements Section {
  public Outline {
    corners = List.copyOf(corners);
  }

  /** A rectangle between two corners. */
  public static Outline box(String name, double x0, double y0, double x1, double y1) {
    List<Vec2> corners = new ArrayList<>();
    corners.add(new Vec2(x0, y0));
    corners.add(new Vec2(x1, y0));
    corners.add(new Vec2(x1, y1));
    corners.add(new Vec2(x0, y1));
    return new Outline(name, corners);
  }

  @Override
  public double area() {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      twice += corners.get(i).x() * next(i).y() - next(i).x() * corners.get(i).y();
    }
    return twice / 2;
  }

  @Override
  public double perimeter() {
    double sum = 0;
    for (int i = 0; i < corners.size(); i++) {
      sum += Math.hypot(next(i).x() - corners.get(i).x(), next(i).y() - corners.get(i).y());
    }
    return sum;
  }

  @Override
  public double innerPerimeter() {
    return 0;
  }

  @Override
  public double depth() {
    double low = corners.stream().mapToDouble(Vec2::y).min().orElse(0);
    return corners.stream().mapToDouble(Vec2::y).max().orElse(0) - low;
  }

  private Vec2 next(int i) {
    return corners.get((i + 1) % corners.size());
  }
}
