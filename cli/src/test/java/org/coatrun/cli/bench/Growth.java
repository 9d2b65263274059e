package org.coatrun.cli.bench;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * How run time grows with size: the exponent e of time = c · size^e, as the least-squares slope of
 * the logarithms, and the exponent that size · log(size) would show over the same sizes.
 */
record Growth(double measured, double nLogN) {

  /** A size and the time that it took, both above zero. */
  record Point(double size, double seconds) {
    Point {
      if (!(size > 1 && seconds > 0)) {
        throw new IllegalArgumentException("a size and a time above zero, not " + size);
      }
    }
  }

  /**
   * The growth over some sizes.
   *
   * @throws IllegalArgumentException where there are not two different ones
   */
  static Growth of(List<Point> points) {
    return new Growth(
        slope(points, Point::seconds), slope(points, p -> p.size() * Math.log(p.size())));
  }

  private static double slope(List<Point> points, ToDoubleFunction<Point> value) {
    double meanX = mean(points, Point::size);
    double meanY = mean(points, value);
    double across = 0;
    double along = 0;
    for (Point p : points) {
      double x = Math.log(p.size()) - meanX;
      across += x * (Math.log(value.applyAsDouble(p)) - meanY);
      along += x * x;
    }
    if (!(along > 0)) {
      throw new IllegalArgumentException("growth needs two different sizes");
    }
    return across / along;
  }

  private static double mean(List<Point> points, ToDoubleFunction<Point> value) {
    return points.stream().mapToDouble(p -> Math.log(value.applyAsDouble(p))).average().orElse(0);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "n^%.2f (n log n: n^%.2f)", measured, nLogN);
  }
}
