package org.coatrun.geometry.profile;

import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Vec2;

/** The bounding rectangle of pieces: exact for lines and arcs, by fine steps for splines. */
final class Extent {

  private static final int SPLINE_STEPS = 64;

  private double minX = Double.POSITIVE_INFINITY;
  private double minY = Double.POSITIVE_INFINITY;
  private double maxX = Double.NEGATIVE_INFINITY;
  private double maxY = Double.NEGATIVE_INFINITY;

  Extent add(Segment2 piece) {
    add(Pieces.start(piece));
    add(Pieces.end(piece));
    if (piece instanceof Segment2.Arc a) {
      addTurn(a, Math.atan2(a.v().x(), a.u().x()));
      addTurn(a, Math.atan2(a.v().y(), a.u().y()));
    } else if (piece instanceof Segment2.Spline s) {
      double from = Pieces.first(s);
      double to = Pieces.last(s);
      int steps = SPLINE_STEPS * s.poles().size();
      for (int i = 1; i < steps; i++) {
        add(Pieces.at(s, from + (to - from) * i / steps));
      }
    }
    return this;
  }

  Rectangle2 rectangle() {
    return new Rectangle2(minX, minY, maxX, maxY);
  }

  /** Adds the extreme point at an angle and the one opposite, where the arc passes them. */
  private void addTurn(Segment2.Arc a, double angle) {
    double low = Math.min(a.start(), a.start() + a.sweep());
    double high = Math.max(a.start(), a.start() + a.sweep());
    double first = angle + Math.PI * Math.ceil((low - angle) / Math.PI);
    for (double t = first; t <= high; t += Math.PI) {
      add(a.at(t));
    }
  }

  private void add(Vec2 p) {
    minX = Math.min(minX, p.x());
    minY = Math.min(minY, p.y());
    maxX = Math.max(maxX, p.x());
    maxY = Math.max(maxY, p.y());
  }
}
