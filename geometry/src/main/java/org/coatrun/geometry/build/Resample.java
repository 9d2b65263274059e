package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.coatrun.geometry.profile.FlatRing;
import org.coatrun.geometry.profile.Ring;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Vec2;

/**
 * Gives two rings of unlike make corners at the same shares of their lengths, so that they can be
 * joined side by side; both start at their corner furthest to the lower left.
 */
final class Resample {

  private static final int PER_QUARTER = 12;
  private static final double SAME = 1e-6;

  private Resample() {}

  /** The ring as lines, with corners where either ring has one. */
  static Ring commonWith(Ring ring, Ring other) {
    List<Vec2> points = fromLowerLeft(FlatRing.of(ring, PER_QUARTER).points());
    var shares = new TreeSet<Double>();
    addShares(shares, points);
    addShares(shares, fromLowerLeft(FlatRing.of(other, PER_QUARTER).points()));
    var corners = new ArrayList<Vec2>();
    double last = Double.NEGATIVE_INFINITY;
    for (double share : shares) {
      if (share - last > SAME && share < 1 - SAME) {
        corners.add(at(points, share));
        last = share;
      }
    }
    var pieces = new ArrayList<Segment2>();
    for (int i = 0; i < corners.size(); i++) {
      pieces.add(new Segment2.Line(corners.get(i), corners.get((i + 1) % corners.size())));
    }
    return new Ring(pieces);
  }

  private static List<Vec2> fromLowerLeft(List<Vec2> points) {
    int best = 0;
    for (int i = 1; i < points.size(); i++) {
      Vec2 p = points.get(i);
      Vec2 b = points.get(best);
      if (p.x() + p.y() < b.x() + b.y()) {
        best = i;
      }
    }
    var out = new ArrayList<>(points.subList(best, points.size()));
    out.addAll(points.subList(0, best));
    return out;
  }

  private static void addShares(Set<Double> shares, List<Vec2> points) {
    double total = length(points);
    double run = 0;
    for (int i = 0; i < points.size(); i++) {
      shares.add(run / total);
      run += points.get(i).distance(points.get((i + 1) % points.size()));
    }
  }

  private static Vec2 at(List<Vec2> points, double share) {
    double left = share * length(points);
    for (int i = 0; i < points.size(); i++) {
      Vec2 a = points.get(i);
      Vec2 b = points.get((i + 1) % points.size());
      double step = a.distance(b);
      if (left <= step && step > 0) {
        return a.plus(b.minus(a).times(left / step));
      }
      left -= step;
    }
    return points.get(0);
  }

  private static double length(List<Vec2> points) {
    double sum = 0;
    for (int i = 0; i < points.size(); i++) {
      sum += points.get(i).distance(points.get((i + 1) % points.size()));
    }
    return sum;
  }
}
