package org.coatrun.ifcimport.shape;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.shared.shape.Curve2;
import org.coatrun.shared.shape.Curve3;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Segment3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/** What can be done with the pieces of a curve: ends, turning round, closing, flattening. */
final class Pieces {

  /** Points nearer than this are one; metres. */
  static final double SAME = 1e-9;

  private Pieces() {}

  static Vec3 start(Segment3 piece) {
    if (piece instanceof Segment3.Line line) {
      return line.from();
    }
    if (piece instanceof Segment3.Arc arc) {
      return arc.at(arc.start());
    }
    return ((Segment3.Spline) piece).poles().get(0);
  }

  static Vec3 end(Segment3 piece) {
    if (piece instanceof Segment3.Line line) {
      return line.to();
    }
    if (piece instanceof Segment3.Arc arc) {
      return arc.at(arc.start() + arc.sweep());
    }
    List<Vec3> poles = ((Segment3.Spline) piece).poles();
    return poles.get(poles.size() - 1);
  }

  static Segment3 reversed(Segment3 piece) {
    if (piece instanceof Segment3.Line line) {
      return new Segment3.Line(line.to(), line.from());
    }
    if (piece instanceof Segment3.Arc a) {
      return new Segment3.Arc(a.centre(), a.u(), a.v(), a.start() + a.sweep(), -a.sweep());
    }
    return reversed((Segment3.Spline) piece);
  }

  private static Segment3 reversed(Segment3.Spline s) {
    var poles = new ArrayList<Vec3>(s.poles());
    var weights = new ArrayList<Double>(s.weights());
    Collections.reverse(poles);
    Collections.reverse(weights);
    var knots = new ArrayList<Double>();
    double ends = s.knots().get(0) + s.knots().get(s.knots().size() - 1);
    for (int i = s.knots().size() - 1; i >= 0; i--) {
      knots.add(ends - s.knots().get(i));
    }
    return new Segment3.Spline(s.degree(), poles, weights, knots);
  }

  static List<Segment3> reversed(List<Segment3> pieces) {
    var back = new ArrayList<Segment3>();
    for (int i = pieces.size() - 1; i >= 0; i--) {
      back.add(reversed(pieces.get(i)));
    }
    return back;
  }

  /** Straight pieces through the points; points that repeat are passed over. */
  static List<Segment3> lines(List<Vec3> points) {
    var pieces = new ArrayList<Segment3>();
    Vec3 last = points.get(0);
    for (Vec3 point : points) {
      if (point.distance(last) > SAME) {
        pieces.add(new Segment3.Line(last, point));
        last = point;
      }
    }
    return pieces;
  }

  static boolean isClosed(List<Segment3> pieces, double tolerance) {
    return start(pieces.get(0)).distance(end(pieces.get(pieces.size() - 1))) <= tolerance;
  }

  static Curve3 curve(List<Segment3> pieces, Entity of) {
    if (pieces.isEmpty()) {
      throw of.broken("a curve of no length");
    }
    return new Curve3(pieces, isClosed(pieces, 1e-6));
  }

  /** A closed curve; a gap between its end and its start is bridged by a straight piece. */
  static Curve3 closed(List<Segment3> pieces, Entity of) {
    if (pieces.isEmpty()) {
      throw of.broken("a curve of no length");
    }
    var all = new ArrayList<Segment3>(pieces);
    if (!isClosed(pieces, SAME)) {
      all.add(new Segment3.Line(end(pieces.get(pieces.size() - 1)), start(pieces.get(0))));
    }
    return new Curve3(all, true);
  }

  /** The curve seen along z. */
  static Curve2 flat(Curve3 curve) {
    return new Curve2(curve.segments().stream().map(Pieces::flat).toList(), curve.closed());
  }

  private static Segment2 flat(Segment3 piece) {
    if (piece instanceof Segment3.Line line) {
      return new Segment2.Line(Axes.flat(line.from()), Axes.flat(line.to()));
    }
    if (piece instanceof Segment3.Arc a) {
      return new Segment2.Arc(
          Axes.flat(a.centre()), Axes.flat(a.u()), Axes.flat(a.v()), a.start(), a.sweep());
    }
    var s = (Segment3.Spline) piece;
    List<Vec2> poles = s.poles().stream().map(Axes::flat).toList();
    return new Segment2.Spline(s.degree(), poles, s.weights(), s.knots());
  }
}
