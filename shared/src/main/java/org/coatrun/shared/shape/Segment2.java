package org.coatrun.shared.shape;

import java.util.List;

/** A piece of a curve in a plane. Every kind stays itself under an affine map. */
public sealed interface Segment2 {

  /** The same piece, mapped. */
  Segment2 map(Transform2 by);

  /** A straight piece. */
  record Line(Vec2 from, Vec2 to) implements Segment2 {
    @Override
    public Segment2 map(Transform2 by) {
      return new Line(by.apply(from), by.apply(to));
    }
  }

  /**
   * A piece of an ellipse, {@code t ↦ centre + u cos t + v sin t}; a circle where u and v are
   * square to each other and of one length.
   *
   * @param u semi-axis at t = 0, its length the radius
   * @param v semi-axis at t = π/2
   * @param start first t in radians
   * @param sweep signed span of t in radians, at most a full turn
   */
  record Arc(Vec2 centre, Vec2 u, Vec2 v, double start, double sweep) implements Segment2 {
    @Override
    public Segment2 map(Transform2 by) {
      return new Arc(by.apply(centre), by.applyVector(u), by.applyVector(v), start, sweep);
    }

    /** The point at parameter t. */
    public Vec2 at(double t) {
      return centre.plus(u.times(Math.cos(t))).plus(v.times(Math.sin(t)));
    }
  }

  /**
   * A B-spline, rational where weights are given.
   *
   * @param poles control points
   * @param weights one for each pole, or empty for an even spline
   * @param knots with repeats written out: poles + degree + 1 of them
   */
  record Spline(int degree, List<Vec2> poles, List<Double> weights, List<Double> knots)
      implements Segment2 {
    public Spline {
      poles = List.copyOf(poles);
      weights = List.copyOf(weights);
      knots = List.copyOf(knots);
      if (degree < 1
          || knots.size() != poles.size() + degree + 1
          || (!weights.isEmpty() && weights.size() != poles.size())) {
        throw new IllegalArgumentException("a spline whose poles, weights and knots do not match");
      }
    }

    @Override
    public Segment2 map(Transform2 by) {
      return new Spline(degree, poles.stream().map(by::apply).toList(), weights, knots);
    }
  }
}
