package org.coatrun.geometry.profile;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.coatrun.shared.shape.Vec2;

/** Whether an outline crosses itself, so that its inside is not told by its area. */
public final class SelfCrossing {

  /** Metres by which a side must pass through another; less is drawn so by accident. */
  private static final double THROUGH = 1e-6;

  private SelfCrossing() {}

  /** A side of the outline. */
  private record Edge(Vec2 from, Vec2 to) {

    double left() {
      return Math.min(from.x(), to.x());
    }

    double right() {
      return Math.max(from.x(), to.x());
    }

    /** Whether the other side's ends lie on either hand of this one, both clear of it. */
    boolean parts(Edge other) {
      double a = aside(other.from);
      double b = aside(other.to);
      return Math.min(a, b) < -THROUGH && Math.max(a, b) > THROUGH;
    }

    private double aside(Vec2 p) {
      double dx = to.x() - from.x();
      double dy = to.y() - from.y();
      return (dx * (p.y() - from.y()) - dy * (p.x() - from.x())) / Math.hypot(dx, dy);
    }
  }

  /**
   * Whether two sides of a closed outline pass through each other. Sides that touch, or run back
   * along each other as where a hole is joined to the outside, do not.
   *
   * @param corners in order, the first not repeated, metres
   */
  public static boolean of(List<Vec2> corners) {
    int n = corners.size();
    if (n < 4) {
      return false;
    }
    Edge[] sides = new Edge[n];
    for (int i = 0; i < n; i++) {
      sides[i] = new Edge(corners.get(i), corners.get((i + 1) % n));
    }
    Arrays.sort(sides, Comparator.comparingDouble(Edge::left));
    for (int i = 0; i < n; i++) {
      for (int k = i + 1; k < n && sides[k].left() < sides[i].right(); k++) {
        if (sides[i].parts(sides[k]) && sides[k].parts(sides[i])) {
          return true;
        }
      }
    }
    return false;
  }
}
