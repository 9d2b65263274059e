package org.coatrun.routing.network;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.shape.Vec2;

/**
 * A shortest way over a floor, from its first point to its last.
 *
 * @param points at least two; equal where start and end are one
 */
public record HosePath(List<Vec2> points) {

  public HosePath {
    points = List.copyOf(points);
    if (points.size() < 2) {
      throw new IllegalArgumentException("a path of " + points.size() + " points");
    }
  }

  /** Its length in metres, corners taken sharp. */
  public double length() {
    double sum = 0;
    for (int i = 1; i < points.size(); i++) {
      sum += points.get(i - 1).distance(points.get(i));
    }
    return sum;
  }

  /** The turns at its corners in radians, in order, each between 0 and π. */
  public List<Double> turns() {
    var turns = new ArrayList<Double>();
    for (int i = 1; i + 1 < points.size(); i++) {
      Vec2 in = points.get(i).minus(points.get(i - 1));
      Vec2 out = points.get(i + 1).minus(points.get(i));
      turns.add(Math.abs(Math.atan2(in.cross(out), in.dot(out))));
    }
    return turns;
  }

  /**
   * What bends of radius R add to the sharp length: R(θ − 2 sin(θ/2)) for a turn of θ, the arc less
   * its chord. In metres.
   */
  public double bendAllowance(double radius) {
    double sum = 0;
    for (double turn : turns()) {
      sum += radius * (turn - 2 * Math.sin(turn / 2));
    }
    return sum;
  }
}
