package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.coatrun.geometry.profile.SplineBasis;
import org.coatrun.geometry.solid.SolidBuilder;
import org.coatrun.geometry.solid.Welder;
import org.coatrun.shared.shape.Curve3;
import org.coatrun.shared.shape.Segment3;
import org.coatrun.shared.shape.Vec3;

/**
 * The edges of an exact brep, each once, and the points that they are cut at: whatever one face
 * needs its neighbour gets as well, so that both meet without a gap.
 */
final class BrepEdges {

  private static final double SAME_POINT = 1e-6;
  private static final double SAME_PLACE = 1e-9;
  private static final int CHORDS_PER_POLE = 4;

  /** An edge as one of its faces runs along it. */
  record Use(Edge edge, boolean back) {

    /** The point at a share of the way. */
    Vec3 at(double t) {
      return edge.at(back ? 1 - t : t);
    }

    /** Cuts the edge at a share of the way. */
    void cut(double t) {
      edge.cut(back ? 1 - t : t);
    }

    /** Where the edge is cut, from 0 on, without its end. */
    List<Double> places() {
      var out = new ArrayList<Double>();
      for (double t : back ? edge.places.descendingSet() : edge.places) {
        out.add(back ? 1 - t : t);
      }
      out.remove(out.size() - 1);
      return out;
    }
  }

  /** A piece of curve and the shares of its way where it is cut. */
  static final class Edge {
    private final Segment3 piece;
    private final SplineBasis basis;
    private final TreeSet<Double> places = new TreeSet<>();

    private Edge(Segment3 piece) {
      this.piece = piece;
      this.basis =
          piece instanceof Segment3.Spline s ? new SplineBasis(s.degree(), s.knots()) : null;
      int n = steps(piece);
      for (int i = 0; i <= n; i++) {
        places.add((double) i / n);
      }
    }

    private Vec3 at(double t) {
      if (piece instanceof Segment3.Line l) {
        return l.from().plus(l.to().minus(l.from()).times(t));
      }
      if (piece instanceof Segment3.Arc a) {
        return a.at(a.start() + t * a.sweep());
      }
      return SplineCurve.at(
          (Segment3.Spline) piece, basis, basis.start() + t * (basis.end() - basis.start()));
    }

    private void cut(double t) {
      Double below = places.floor(t);
      Double above = places.ceiling(t);
      if (below != null && above != null && t - below > SAME_PLACE && above - t > SAME_PLACE) {
        places.add(t);
      }
    }
  }

  private record Key(int low, int high, int middle) {}

  private final Welder welder = new Welder(new SolidBuilder(), SAME_POINT);
  private final Map<Key, Edge> edges = new HashMap<>();

  /** The edges of a loop in order. */
  List<Use> uses(Curve3 loop) {
    var out = new ArrayList<Use>();
    for (Segment3 piece : loop.segments()) {
      Edge own = new Edge(piece);
      int from = number(own.at(0));
      int to = number(own.at(1));
      int middle = number(own.at(0.5));
      if (from == to && from == middle) {
        continue;
      }
      Edge known =
          edges.computeIfAbsent(new Key(Math.min(from, to), Math.max(from, to), middle), k -> own);
      double quarter = known.at(0.25).distance(own.at(0.25));
      out.add(new Use(known, quarter > known.at(0.75).distance(own.at(0.25))));
    }
    return out;
  }

  private int number(Vec3 p) {
    return welder.vertex(p.x(), p.y(), p.z());
  }

  private static int steps(Segment3 piece) {
    if (piece instanceof Segment3.Arc a) {
      double quarters = Math.abs(a.sweep()) / (Math.PI / 2);
      return Math.max(2, (int) Math.ceil(quarters * Sweeps.PER_QUARTER - 1e-9));
    }
    return piece instanceof Segment3.Spline s ? CHORDS_PER_POLE * s.poles().size() : 1;
  }
}
