package org.coatrun.cli.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Lettering;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.cli.drawing.paper.Typeface;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/**
 * Draws the size of a floor's slab, and how far machine, risers and outlets stand from its edges:
 * below and on its left, or on the other sides where marks leave no room.
 */
final class Dimensions {

  private static final Lettering TEXT = Lettering.plain(2.2);
  private static final double FIRST = 5;
  private static final double NEXT = 4.5;
  private static final double FARTHEST = 30;
  private static final double ROOM = 3.2;
  private static final double TICK = 0.8;

  private final PlanCanvas to;
  private final Measure measure;

  Dimensions(PlanCanvas to, Measure measure) {
    this.to = to;
    this.measure = measure;
  }

  /** A side of the slab on paper: its edge, and which way is out. */
  private record Side(boolean level, double edge, double out) {

    Vec2 at(double along, double off) {
      double across = edge + out * off;
      return level ? new Vec2(along, across) : new Vec2(across, along);
    }

    Box strip(double from, double to, double near, double far) {
      Vec2 a = at(from, near);
      Vec2 b = at(to, far);
      return new Box(
          Math.min(a.x(), b.x()),
          Math.min(a.y(), b.y()),
          Math.max(a.x(), b.x()),
          Math.max(a.y(), b.y()));
    }
  }

  /**
   * @param places what is dimensioned, in metres, the weightiest first; one too close to another
   *     for a number between them is left out
   */
  void draw(List<Region> plate, List<Vec2> places) {
    if (plate.isEmpty()) {
      return;
    }
    Box slab =
        BuildingLayer.box(plate.stream().flatMap(r -> to.view().at(r.outline()).stream()).toList());
    List<Vec2> marks = to.view().at(places);
    run(
        stops(slab.left(), slab.right(), marks, Vec2::x),
        new Side(true, slab.bottom(), 1),
        new Side(true, slab.top(), -1));
    run(
        stops(slab.top(), slab.bottom(), marks, Vec2::y),
        new Side(false, slab.left(), -1),
        new Side(false, slab.right(), 1));
  }

  private List<Double> stops(double from, double end, List<Vec2> marks, ToDoubleFunction<Vec2> of) {
    var stops = new ArrayList<>(List.of(from, end));
    for (Vec2 mark : marks) {
      double at = of.applyAsDouble(mark);
      if (from < at && at < end && stops.stream().allMatch(s -> fits(s, at))) {
        stops.add(at);
      }
    }
    Collections.sort(stops);
    return stops;
  }

  private boolean fits(double a, double b) {
    return Math.abs(a - b) > Typeface.get().width(words(a, b), TEXT.size()) + 2;
  }

  private String words(double a, double b) {
    return measure.length(Length.ofMetres(Math.abs(a - b) / to.view().size(1)));
  }

  /** On the first side that has room, as near to the slab as that is. */
  private void run(List<Double> stops, Side... sides) {
    double first = stops.get(0);
    double last = stops.get(stops.size() - 1);
    double depth = stops.size() > 2 ? NEXT : 0;
    for (Side side : sides) {
      for (double off = FIRST; off <= FARTHEST; off += 1) {
        Box strip = side.strip(first, last, off - ROOM, off + depth + ROOM);
        if (to.labels().clear(strip)) {
          chain(side, stops, off);
          if (stops.size() > 2) {
            chain(side, List.of(first, last), off + NEXT);
          }
          to.labels().keepOff(strip);
          return;
        }
      }
    }
  }

  private void chain(Side side, List<Double> stops, double off) {
    double first = stops.get(0);
    double last = stops.get(stops.size() - 1);
    to.on().line(List.of(side.at(first, off), side.at(last, off)), false, Pen.THIN);
    for (double stop : stops) {
      double begin = stop == first || stop == last ? 1 : off - 1.5;
      to.on().line(List.of(side.at(stop, begin), side.at(stop, off + 1)), false, Pen.THIN);
      Vec2 slant = new Vec2(TICK, -TICK);
      Vec2 at = side.at(stop, off);
      to.on().line(List.of(at.minus(slant), at.plus(slant)), false, Pen.SYMBOL);
    }
    for (int i = 1; i < stops.size(); i++) {
      number(side, stops.get(i - 1), stops.get(i), off);
    }
  }

  /** Over the line; of an upright one, read from the right. */
  private void number(Side side, double a, double b, double off) {
    Vec2 middle = side.at((a + b) / 2, off);
    Vec2 over = side.level ? new Vec2(0, -0.7) : new Vec2(-0.7, 0);
    to.on().text(middle.plus(over), words(a, b), TEXT.centred(), side.level ? 0 : 90);
  }
}
