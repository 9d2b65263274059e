package org.coatrun.geometry.profile;

import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Vec2;

/** A point of a spline and the derivative there. */
record SplinePoint(Vec2 value, Vec2 slope) {

  static SplinePoint of(Segment2.Spline s, SplineBasis basis, double t) {
    int span = basis.span(t);
    double[] n = basis.values(span, t);
    double[] d = basis.derivatives(span, t);
    Vec2 a = Vec2.ZERO;
    Vec2 da = Vec2.ZERO;
    double w = 0;
    double dw = 0;
    for (int j = 0; j <= s.degree(); j++) {
      int i = span - s.degree() + j;
      double weight = s.weights().isEmpty() ? 1 : s.weights().get(i);
      a = a.plus(s.poles().get(i).times(n[j] * weight));
      da = da.plus(s.poles().get(i).times(d[j] * weight));
      w += n[j] * weight;
      dw += d[j] * weight;
    }
    Vec2 value = a.times(1 / w);
    return new SplinePoint(value, da.minus(value.times(dw)).times(1 / w));
  }
}
