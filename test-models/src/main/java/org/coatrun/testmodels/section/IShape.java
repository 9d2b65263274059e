package org.coatrun.testmodels.section;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.testmodels.shape.Vec2;

/**
 * A rolled I-shape, centred, its web along y.
 *
 * @param depth overall depth
 * @param width flange width
 * @param web web thickness
 * @param flange flange thickness
 * @param fillet radius between web and flange
 */
public record IShape(
    String name, double depth, double width, double web, double flange, double fillet)
    implements Section {
  private static final double HALF_PI = Math.PI / 2;

  @Override
  public double area() {
    return 2 * width * flange + (depth - 2 * flange) * web + (4 - Math.PI) * fillet * fillet;
  }

  @Override
  public double perimeter() {
    return 2 * depth + 4 * width - 2 * web - (8 - 2 * Math.PI) * fillet;
  }

  @Override
  public double innerPerimeter() {
    return 0;
  }

  /**
   * Returns the outline as straight pieces, anticlockwise.
   *
   * @param steps chords per fillet; 0 gives sharp corners
   */
  public List<Vec2> outline(int steps) {
    double b = width / 2;
    double h = depth / 2;
    double w = web / 2;
    double i = h - flange;
    List<Vec2> out = new ArrayList<>();
    out.add(new Vec2(-b, -h));
    out.add(new Vec2(b, -h));
    out.add(new Vec2(b, -i));
    corner(out, w + fillet, -i + fillet, 3 * HALF_PI, w, -i, steps);
    corner(out, w + fillet, i - fillet, 2 * HALF_PI, w, i, steps);
    out.add(new Vec2(b, i));
    out.add(new Vec2(b, h));
    out.add(new Vec2(-b, h));
    out.add(new Vec2(-b, i));
    corner(out, -w - fillet, i - fillet, HALF_PI, -w, i, steps);
    corner(out, -w - fillet, -i + fillet, 0, -w, -i, steps);
    out.add(new Vec2(-b, -i));
    return out;
  }

  private void corner(
      List<Vec2> out, double cx, double cy, double from, double sx, double sy, int steps) {
    if (steps == 0 || fillet == 0) {
      out.add(new Vec2(sx, sy));
      return;
    }
    for (int k = 0; k <= steps; k++) {
      double angle = from - HALF_PI * k / steps;
      double x = cx + fillet * StrictMath.cos(angle);
      out.add(new Vec2(x, cy + fillet * StrictMath.sin(angle)));
    }
  }
}
