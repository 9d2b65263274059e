package org.coatrun.routing.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.algorithm.RayCrossingCounter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;

/**
 * The slow and sure way to a shortest hose: every corner, every pair, every edge. A line is clear
 * when it crosses no edge, and when the middle of each piece between the corners it touches is
 * free. Works on doubled whole numbers, so that all middles are whole too.
 */
final class BruteForce {

  private static final double SCALE = 20_000;
  private final List<Coordinate[]> edges = new ArrayList<>();
  private final List<Coordinate> corners = new ArrayList<>();

  BruteForce(List<Region> free) {
    for (Region r : free) {
      addRing(r.outline());
      r.holes().forEach(this::addRing);
    }
  }

  /** Infinite where no way leads there. */
  double distance(Vec2 from, Vec2 to) {
    var nodes = new ArrayList<>(corners);
    nodes.add(whole(from));
    nodes.add(whole(to));
    int n = nodes.size();
    double[] best = new double[n];
    boolean[] done = new boolean[n];
    Arrays.fill(best, Double.POSITIVE_INFINITY);
    best[n - 2] = 0;
    for (int step = 0; step < n; step++) {
      int at = nearest(best, done);
      if (at < 0 || at == n - 1) {
        break;
      }
      done[at] = true;
      for (int j = 0; j < n; j++) {
        double length = best[at] + nodes.get(at).distance(nodes.get(j)) / SCALE;
        if (!done[j] && length < best[j] && clear(nodes.get(at), nodes.get(j))) {
          best[j] = length;
        }
      }
    }
    return best[n - 1];
  }

  private static int nearest(double[] best, boolean[] done) {
    int at = -1;
    for (int i = 0; i < best.length; i++) {
      if (!done[i] && Double.isFinite(best[i]) && (at < 0 || best[i] < best[at])) {
        at = i;
      }
    }
    return at;
  }

  private boolean clear(Coordinate u, Coordinate v) {
    var cuts = new ArrayList<>(List.of(u, v));
    for (Coordinate[] e : edges) {
      int a = Orientation.index(u, v, e[0]);
      int b = Orientation.index(u, v, e[1]);
      if (a * b < 0 && Orientation.index(e[0], e[1], u) * Orientation.index(e[0], e[1], v) < 0) {
        return false;
      }
      if (a == 0 && between(u, v, e[0])) {
        cuts.add(e[0]);
      }
    }
    cuts.sort((p, q) -> Double.compare(p.distance(u), q.distance(u)));
    for (int i = 1; i < cuts.size(); i++) {
      Coordinate p = cuts.get(i - 1);
      Coordinate q = cuts.get(i);
      if (!inside(new Coordinate((p.x + q.x) / 2, (p.y + q.y) / 2))) {
        return false;
      }
    }
    return true;
  }

  private boolean inside(Coordinate c) {
    var counter = new RayCrossingCounter(c);
    for (Coordinate[] e : edges) {
      counter.countSegment(e[0], e[1]);
    }
    return counter.getLocation() != Location.EXTERIOR;
  }

  private static boolean between(Coordinate u, Coordinate v, Coordinate p) {
    return Math.min(u.x, v.x) <= p.x
        && p.x <= Math.max(u.x, v.x)
        && Math.min(u.y, v.y) <= p.y
        && p.y <= Math.max(u.y, v.y);
  }

  private void addRing(List<Vec2> ring) {
    for (int i = 0; i < ring.size(); i++) {
      corners.add(whole(ring.get(i)));
      edges.add(new Coordinate[] {whole(ring.get(i)), whole(ring.get((i + 1) % ring.size()))});
    }
  }

  private static Coordinate whole(Vec2 p) {
    return new Coordinate(2 * Math.rint(p.x() * SCALE / 2), 2 * Math.rint(p.y() * SCALE / 2));
  }
}
