package org.coatrun.geometry.profile;

import java.util.List;

/**
 * The basis functions of a B-spline over one knot vector, by the recurrence of Cox and de Boor
 * (Piegl and Tiller, The NURBS Book, algorithms A2.1 and A2.2).
 */
public final class SplineBasis {

  private final int degree;
  private final double[] knots;
  private final int poles;

  /**
   * @param knots with repeats written out: poles + degree + 1 of them, never falling
   */
  public SplineBasis(int degree, List<Double> knots) {
    this.degree = degree;
    this.knots = knots.stream().mapToDouble(Double::doubleValue).toArray();
    this.poles = this.knots.length - degree - 1;
  }

  /** First parameter of the curve. */
  public double start() {
    return knots[degree];
  }

  /** Last parameter of the curve. */
  public double end() {
    return knots[poles];
  }

  /** The different knots from start to end. */
  public double[] breaks() {
    var distinct = new double[knots.length];
    int n = 0;
    for (int i = degree; i <= poles; i++) {
      if (n == 0 || knots[i] > distinct[n - 1]) {
        distinct[n++] = knots[i];
      }
    }
    return java.util.Arrays.copyOf(distinct, n);
  }

  /** Number of the span that holds {@code t}: between {@code degree} and the number of poles. */
  public int span(double t) {
    int low = degree;
    int high = poles - 1;
    while (high > low && knots[high] > t) {
      high--;
    }
    while (high > low && knots[high] == knots[high + 1]) {
      high--;
    }
    return high;
  }

  /** The values at {@code t} of the functions that live on a span: degree + 1 of them. */
  public double[] values(int span, double t) {
    return values(span, t, degree);
  }

  /** The first derivatives at {@code t} of the functions that live on a span. */
  public double[] derivatives(int span, double t) {
    double[] lower = values(span, t, degree - 1);
    var out = new double[degree + 1];
    for (int j = 0; j <= degree; j++) {
      int i = span - degree + j;
      double left = j > 0 ? quotient(lower[j - 1], knots[i + degree] - knots[i]) : 0;
      double right = j < degree ? quotient(lower[j], knots[i + degree + 1] - knots[i + 1]) : 0;
      out[j] = degree * (left - right);
    }
    return out;
  }

  private double[] values(int span, double t, int p) {
    var n = new double[p + 1];
    n[0] = 1;
    for (int j = 1; j <= p; j++) {
      double saved = 0;
      for (int r = 0; r < j; r++) {
        double right = knots[span + r + 1] - t;
        double left = t - knots[span + 1 - j + r];
        double term = quotient(n[r], right + left);
        n[r] = saved + right * term;
        saved = left * term;
      }
      n[j] = saved;
    }
    return n;
  }

  private static double quotient(double a, double b) {
    return b == 0 ? 0 : a / b;
  }
}
