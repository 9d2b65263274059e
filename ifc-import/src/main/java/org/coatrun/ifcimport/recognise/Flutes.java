package org.coatrun.ifcimport.recognise;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.shape.Curve2;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Vec2;

/** Tells the section of a fluted sheet: wide, low, and up and down again several times. */
final class Flutes {

  private static final int FEWEST_CORNERS = 10;
  private static final int FEWEST_TURNS = 6;
  private static final double WIDE = 3;
  private static final double DEEPEST = 0.35;

  private Flutes() {}

  static boolean isFluted(Profile profile) {
    if (profile instanceof Profile.Placed placed) {
      return isFluted(placed.of());
    }
    if (profile instanceof Profile.CentreLine line) {
      return isFluted(line.path());
    }
    return profile instanceof Profile.Outline outline && isFluted(outline.outer());
  }

  private static boolean isFluted(Curve2 curve) {
    List<Vec2> corners = new ArrayList<>();
    for (Segment2 piece : curve.segments()) {
      if (piece instanceof Segment2.Line line) {
        corners.add(line.from());
        corners.add(line.to());
      } else if (piece instanceof Segment2.Arc arc) {
        corners.add(arc.at(arc.start()));
        corners.add(arc.at(arc.start() + arc.sweep()));
      }
    }
    if (corners.size() < FEWEST_CORNERS) {
      return false;
    }
    double width = span(corners, true);
    double height = span(corners, false);
    boolean lying = width >= height;
    double across = Math.min(width, height);
    return Math.max(width, height) > WIDE * across
        && across < DEEPEST
        && turns(corners, lying, across) >= FEWEST_TURNS;
  }

  private static double span(List<Vec2> corners, boolean x) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Vec2 c : corners) {
      double v = x ? c.x() : c.y();
      low = Math.min(low, v);
      high = Math.max(high, v);
    }
    return high - low;
  }

  /** How often the outline turns between up and down by at least half its depth. */
  private static int turns(List<Vec2> corners, boolean lying, double depth) {
    int turns = 0;
    int way = 0;
    double extreme = value(corners.get(0), lying);
    for (Vec2 corner : corners) {
      double v = value(corner, lying);
      if (way >= 0 && v < extreme - depth / 2) {
        turns += way > 0 ? 1 : 0;
        way = -1;
        extreme = v;
      } else if (way <= 0 && v > extreme + depth / 2) {
        turns += way < 0 ? 1 : 0;
        way = 1;
        extreme = v;
      } else if ((way > 0 && v > extreme) || (way < 0 && v < extreme)) {
        extreme = v;
      }
    }
    return turns;
  }

  private static double value(Vec2 corner, boolean lying) {
    return lying ? corner.y() : corner.x();
  }
}
