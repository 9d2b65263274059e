package org.coatrun.cli.drawing;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.shared.shape.Vec2;

/** What labels must or had better keep off, and what a place for a label costs. */
final class LabelGround {

  /** A place that costs so much is no place for a label that can be done without. */
  static final double CROWDED = 15;

  private static final double ON_MARK = 1000;
  private static final double OFF_THE_AREA = 1e6;
  private static final double ACROSS_MARK = 30;

  private final Box area;
  private final List<Box> marks = new ArrayList<>();
  private final List<Stroke> strokes = new ArrayList<>();

  /** A line that labels had better not cover, and how much better. */
  private record Stroke(Vec2 a, Vec2 b, double weight) {}

  LabelGround(Box area) {
    this.area = area;
  }

  void mark(Box mark) {
    marks.add(mark);
  }

  boolean clear(Box box) {
    return area.contains(box) && marks.stream().noneMatch(m -> m.meets(box));
  }

  void stroke(Vec2 a, Vec2 b, double weight) {
    strokes.add(new Stroke(a, b, weight));
  }

  /** What a label that fills these boxes covers, weighed. */
  double cost(List<Box> boxes) {
    double cost = 0;
    for (Box box : boxes) {
      cost += area.contains(box) ? 0 : OFF_THE_AREA;
      for (Box m : marks) {
        cost += m.meets(box) ? ON_MARK : 0;
      }
      for (Stroke s : strokes) {
        cost += box.crossedBy(s.a, s.b) ? s.weight : 0;
      }
    }
    return cost;
  }

  /** What the way between a point and its label costs: its length, and marks in between. */
  double leader(Vec2 point, Box box, double step) {
    if (step <= 1) {
      return 0.6 * step;
    }
    Vec2 end = box.clamp(point);
    long between =
        marks.stream().filter(m -> !m.contains(point) && m.crossedBy(point, end)).count();
    return 0.6 * step + 1.5 + ACROSS_MARK * between;
  }
}
