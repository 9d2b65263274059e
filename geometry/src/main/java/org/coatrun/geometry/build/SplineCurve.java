package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.geometry.profile.SplineBasis;
import org.coatrun.shared.shape.Segment3;
import org.coatrun.shared.shape.Vec3;

/** Points of splines in space. */
final class SplineCurve {

  private SplineCurve() {}

  /** {@code n} + 1 points at even steps of the parameter, both ends included. */
  static List<Vec3> points(Segment3.Spline s, int n) {
    var basis = new SplineBasis(s.degree(), s.knots());
    var out = new ArrayList<Vec3>();
    for (int i = 0; i <= n; i++) {
      out.add(at(s, basis, basis.start() + (basis.end() - basis.start()) * i / n));
    }
    return out;
  }

  static Vec3 at(Segment3.Spline s, SplineBasis basis, double t) {
    int span = basis.span(t);
    double[] n = basis.values(span, t);
    Vec3 sum = Vec3.ZERO;
    double weight = 0;
    for (int j = 0; j <= s.degree(); j++) {
      int i = span - s.degree() + j;
      double w = n[j] * (s.weights().isEmpty() ? 1 : s.weights().get(i));
      sum = sum.plus(s.poles().get(i).times(w));
      weight += w;
    }
    return sum.times(1 / weight);
  }
}
