package org.coatrun.geometry.profile;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Vec2;

/** Corners along a spline, moved off it along its normals until the area under them is right. */
final class SplineCorners {

  private SplineCorners() {}

  /** All corners but the last. */
  static List<Vec2> of(Segment2.Spline s, int n) {
    Vec2 start = Pieces.start(s);
    var on = new ArrayList<Vec2>();
    var normal = new ArrayList<Vec2>();
    double from = Pieces.first(s);
    double step = (Pieces.last(s) - from) / n;
    for (int j = 0; j <= n; j++) {
      on.add(Pieces.at(s, from + j * step).minus(start));
      boolean end = j == 0 || j == n;
      normal.add(end ? Vec2.ZERO : Pieces.slope(s, from + j * step).unit().left().times(-1));
    }
    double by = shift(on, normal, Pieces.areaTerm(s, start));
    var out = new ArrayList<Vec2>();
    for (int j = 0; j < n; j++) {
      out.add(start.plus(on.get(j)).plus(normal.get(j).times(by)));
    }
    return out;
  }

  /** Solves a + b s + c s² = area for the small root. */
  private static double shift(List<Vec2> p, List<Vec2> n, double area) {
    double a = -area;
    double b = 0;
    double c = 0;
    for (int j = 1; j < p.size(); j++) {
      a += 0.5 * p.get(j - 1).cross(p.get(j));
      b += 0.5 * (p.get(j - 1).cross(n.get(j)) + n.get(j - 1).cross(p.get(j)));
      c += 0.5 * n.get(j - 1).cross(n.get(j));
    }
    double root = b * b - 4 * a * c;
    double sum = b + Math.copySign(Math.sqrt(Math.max(0, root)), b);
    return root < 0 || sum == 0 ? 0 : -2 * a / sum;
  }
}
