package org.coatrun.cli.drawing;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.shape.Vec2;

/** Lines cut off at the edge of an area. */
final class Hatch {

  private Hatch() {}

  /**
   * Parallel lines inside the rings by the even-odd rule, each as its two ends.
   *
   * @param degrees direction of the lines
   * @param spacing between them; all lines of one direction and spacing lie on one lattice
   */
  static List<List<Vec2>> lines(List<List<Vec2>> rings, double degrees, double spacing) {
    Vec2 along = new Vec2(Math.cos(Math.toRadians(degrees)), Math.sin(Math.toRadians(degrees)));
    Vec2 across = along.left();
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (List<Vec2> ring : rings) {
      for (Vec2 p : ring) {
        least = Math.min(least, p.dot(across));
        most = Math.max(most, p.dot(across));
      }
    }
    var lines = new ArrayList<List<Vec2>>();
    for (long i = (long) Math.ceil(least / spacing); i * spacing <= most; i++) {
      lines.addAll(inside(rings, along, across, i * spacing));
    }
    return lines;
  }

  /** What of the straight line between two points lies inside the rings. */
  static List<List<Vec2>> inside(List<List<Vec2>> rings, Vec2 a, Vec2 b) {
    Vec2 along = b.minus(a).unit();
    double from = a.dot(along);
    double to = b.dot(along);
    var kept = new ArrayList<List<Vec2>>();
    for (List<Vec2> piece : inside(rings, along, along.left(), a.dot(along.left()))) {
      double start = Math.max(from, piece.get(0).dot(along));
      double end = Math.min(to, piece.get(1).dot(along));
      if (start < end) {
        Vec2 foot = a.minus(along.times(from));
        kept.add(List.of(foot.plus(along.times(start)), foot.plus(along.times(end))));
      }
    }
    return kept;
  }

  private static List<List<Vec2>> inside(
      List<List<Vec2>> rings, Vec2 along, Vec2 across, double level) {
    var crossings = new ArrayList<Double>();
    for (List<Vec2> ring : rings) {
      Vec2 a = ring.get(ring.size() - 1);
      for (Vec2 b : ring) {
        double ha = a.dot(across) - level;
        double hb = b.dot(across) - level;
        if (ha > 0 != hb > 0) {
          crossings.add(a.plus(b.minus(a).times(ha / (ha - hb))).dot(along));
        }
        a = b;
      }
    }
    crossings.sort(Double::compare);
    var pieces = new ArrayList<List<Vec2>>();
    for (int i = 1; i < crossings.size(); i += 2) {
      Vec2 foot = across.times(level);
      pieces.add(
          List.of(
              foot.plus(along.times(crossings.get(i - 1))),
              foot.plus(along.times(crossings.get(i)))));
    }
    return pieces;
  }
}
