package org.coatrun.geometry.profile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Vec2;

/**
 * What can be asked of one piece of a plane curve. Each kind has its own parameter: 0 to 1 for a
 * line, the angle for an arc, the knot value for a spline.
 */
public final class Pieces {

  private static final double ROUND = 1e-12;
  private static final double PANEL = Math.PI / 12;

  private Pieces() {}

  /** Parameter where the piece starts. */
  public static double first(Segment2 piece) {
    if (piece instanceof Segment2.Arc a) {
      return a.start();
    }
    return piece instanceof Segment2.Spline s ? basis(s).start() : 0;
  }

  /** Parameter where the piece ends. */
  public static double last(Segment2 piece) {
    if (piece instanceof Segment2.Arc a) {
      return a.start() + a.sweep();
    }
    return piece instanceof Segment2.Spline s ? basis(s).end() : 1;
  }

  /** Where the piece starts. */
  public static Vec2 start(Segment2 piece) {
    return piece instanceof Segment2.Line l ? l.from() : at(piece, first(piece));
  }

  /** Where the piece ends. */
  public static Vec2 end(Segment2 piece) {
    return piece instanceof Segment2.Line l ? l.to() : at(piece, last(piece));
  }

  /** The point at a parameter. */
  public static Vec2 at(Segment2 piece, double t) {
    if (piece instanceof Segment2.Line l) {
      return l.from().plus(l.to().minus(l.from()).times(t));
    }
    if (piece instanceof Segment2.Arc a) {
      return a.at(t);
    }
    return SplinePoint.of((Segment2.Spline) piece, basis((Segment2.Spline) piece), t).value();
  }

  /** The derivative of the point by the parameter. */
  public static Vec2 slope(Segment2 piece, double t) {
    if (piece instanceof Segment2.Line l) {
      return l.to().minus(l.from());
    }
    if (piece instanceof Segment2.Arc a) {
      return a.v().times(Math.cos(t)).minus(a.u().times(Math.sin(t)));
    }
    return SplinePoint.of((Segment2.Spline) piece, basis((Segment2.Spline) piece), t).slope();
  }

  /** Length in metres: exact for lines and circles, to about 1e-12 for the rest. */
  public static double length(Segment2 piece) {
    if (piece instanceof Segment2.Line l) {
      return l.from().distance(l.to());
    }
    if (piece instanceof Segment2.Arc a && isCircular(a)) {
      return a.u().length() * Math.abs(a.sweep());
    }
    return Math.abs(integrate(piece, t -> slope(piece, t).length()));
  }

  /**
   * The piece's share of the area to the left of a ring, ½ ∫ (x dy − y dx), about {@code about}:
   * exact for lines and arcs.
   */
  public static double areaTerm(Segment2 piece, Vec2 about) {
    Vec2 from = start(piece).minus(about);
    Vec2 to = end(piece).minus(about);
    if (piece instanceof Segment2.Line) {
      return 0.5 * from.cross(to);
    }
    if (piece instanceof Segment2.Arc a) {
      double fan = a.u().cross(a.v()) * a.sweep();
      return 0.5 * (a.centre().minus(about).cross(to.minus(from)) + fan);
    }
    return integrate(piece, t -> 0.5 * at(piece, t).minus(about).cross(slope(piece, t)));
  }

  /** The same piece from its end to its start. */
  public static Segment2 reversed(Segment2 piece) {
    if (piece instanceof Segment2.Line l) {
      return new Segment2.Line(l.to(), l.from());
    }
    if (piece instanceof Segment2.Arc a) {
      return new Segment2.Arc(a.centre(), a.u(), a.v(), a.start() + a.sweep(), -a.sweep());
    }
    var s = (Segment2.Spline) piece;
    double sum = s.knots().get(0) + s.knots().get(s.knots().size() - 1);
    List<Double> knots = backwards(s.knots()).stream().map(k -> sum - k).toList();
    return new Segment2.Spline(s.degree(), backwards(s.poles()), backwards(s.weights()), knots);
  }

  /** Whether an arc is of a circle. */
  public static boolean isCircular(Segment2.Arc a) {
    double uu = a.u().dot(a.u());
    double vv = a.v().dot(a.v());
    return Math.abs(uu - vv) <= ROUND * uu && Math.abs(a.u().dot(a.v())) <= ROUND * uu;
  }

  static SplineBasis basis(Segment2.Spline s) {
    return new SplineBasis(s.degree(), s.knots());
  }

  /** Integrates over the piece in panels short enough for eight points. */
  private static double integrate(Segment2 piece, DoubleUnaryOperator f) {
    if (piece instanceof Segment2.Arc a) {
      int panels = Math.max(1, (int) Math.ceil(Math.abs(a.sweep()) / PANEL));
      return Quadrature.integrate(f, first(piece), last(piece), panels);
    }
    double[] breaks = basis((Segment2.Spline) piece).breaks();
    double sum = 0;
    for (int i = 1; i < breaks.length; i++) {
      sum += Quadrature.integrate(f, breaks[i - 1], breaks[i], 8);
    }
    return sum;
  }

  private static <T> List<T> backwards(List<T> list) {
    var copy = new ArrayList<>(list);
    Collections.reverse(copy);
    return copy;
  }
}
