package org.coatrun.geometry.profile;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Vec2;

/** Corners of a polygon that encloses, with an arc's centre, the area that the arc does. */
public final class ArcCorners {

  private ArcCorners() {}

  /**
   * Radius, as a share of the arc's own, at which the points between its ends must lie so that
   * {@code n} equal steps over {@code sweep} radians enclose the arc's area.
   *
   * @param fixedEnds whether the first and last point stay on the arc; else all points move
   */
  public static double share(double sweep, int n, boolean fixedEnds) {
    double theta = Math.abs(sweep);
    double s = Math.sin(theta / n);
    if (!fixedEnds) {
      return Math.sqrt(theta / (n * s));
    }
    // (n - 2) ½ ρ² s + ρ s = ½ θ
    double a = 0.5 * (n - 2) * s;
    double c = 0.5 * theta;
    return 2 * c / (s + Math.sqrt(s * s + 4 * a * c));
  }

  /** All corners but the last; of a whole turn a regular polygon. */
  static List<Vec2> of(Segment2.Arc a, int n, boolean whole) {
    double share = share(a.sweep(), n, !whole);
    var out = new ArrayList<Vec2>();
    for (int j = 0; j < n; j++) {
      Vec2 on = a.at(a.start() + a.sweep() * j / n);
      boolean stays = j == 0 && !whole;
      out.add(stays ? on : a.centre().plus(on.minus(a.centre()).times(share)));
    }
    return out;
  }
}
