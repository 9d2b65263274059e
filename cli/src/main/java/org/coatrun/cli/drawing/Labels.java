package org.coatrun.cli.drawing;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Lettering;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.cli.drawing.paper.Surface;
import org.coatrun.cli.drawing.paper.Tone;
import org.coatrun.cli.drawing.paper.Typeface;
import org.coatrun.shared.shape.Vec2;

/**
 * Puts labels where they cover as little as may be: never off the area, on each other or on a
 * symbol where there is room, and off the lines that matter. In the order asked for, so the
 * weightiest come first.
 */
final class Labels {

  private static final double PAD = 0.4;
  private static final double[] STEPS = {0.6, 3, 6, 10, 15, 21, 28, 36};
  private static final int DIRECTIONS = 16;

  private final Surface on;
  private final LabelGround ground;

  /** A place for a label. */
  private record Place(List<Box> boxes, double cost) {}

  Labels(Surface on, Box area) {
    this.on = on;
    this.ground = new LabelGround(area);
  }

  /** No label covers this if it can be helped. */
  void keepOff(Box mark) {
    ground.mark(mark);
  }

  /** Whether no mark lies in a box on the sheet. */
  boolean clear(Box box) {
    return ground.clear(box);
  }

  /** Labels had better not cover this line. */
  void keepOff(List<Vec2> line, double weight) {
    for (int i = 1; i < line.size(); i++) {
      ground.stroke(line.get(i - 1), line.get(i), weight);
    }
  }

  /** The same with the line from the last point to the first. */
  void keepOffRing(List<Vec2> ring, double weight) {
    keepOff(ring, weight);
    ground.stroke(ring.get(ring.size() - 1), ring.get(0), weight);
  }

  /** Writes lines of text near a point, which is the middle of a mark of this radius. */
  void near(Vec2 point, double radius, List<String> text, Lettering lettering) {
    double width =
        text.stream().mapToDouble(t -> Typeface.get().width(t, lettering.size())).max().orElse(0);
    double line = 1.25 * lettering.size();
    double height = line * text.size();
    Place best = null;
    for (double step : STEPS) {
      for (int d = 0; d < DIRECTIONS; d++) {
        double a = Math.PI * 2 * d / DIRECTIONS;
        Vec2 out = new Vec2(Math.cos(a), Math.sin(a));
        double beside = Math.min(width / 2 / Math.abs(out.x()), height / 2 / Math.abs(out.y()));
        Vec2 centre = point.plus(out.times(radius + step + beside));
        Box box = Box.around(centre, width + 2 * PAD, height + 2 * PAD);
        Place place =
            new Place(List.of(box), ground.cost(List.of(box)) + ground.leader(point, box, step));
        best = best == null || place.cost < best.cost - 1e-9 ? place : best;
      }
    }
    write(best.boxes.get(0), text, lettering, line);
    lead(point, radius, best.boxes.get(0));
  }

  /**
   * Writes one line of text along the straight line between two points, beside it; leaves it out
   * where it would cover a mark or lines that matter.
   */
  void along(Vec2 a, Vec2 b, String text, Lettering lettering) {
    double width = Typeface.get().width(text, lettering.size());
    Vec2 way =
        b.x() < a.x() - 1e-9 || (Math.abs(b.x() - a.x()) <= 1e-9 && b.y() > a.y())
            ? a.minus(b).unit()
            : b.minus(a).unit();
    Vec2 up = way.left().times(-1);
    Place best = null;
    Vec2 bestMiddle = a;
    for (double t : new double[] {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8}) {
      for (double side : new double[] {1, -1, 1.8, -1.8}) {
        Vec2 middle =
            a.plus(b.minus(a).times(t)).plus(up.times(side * (1.1 + 0.45 * lettering.size())));
        List<Box> boxes = boxesAlong(middle, way, width, lettering.size());
        Place place =
            new Place(
                boxes, ground.cost(boxes) + 3 * Math.abs(t - 0.5) + (Math.abs(side) > 1 ? 2 : 0));
        if (best == null || place.cost < best.cost - 1e-9) {
          best = place;
          bestMiddle = middle;
        }
      }
    }
    if (best.cost < LabelGround.CROWDED) {
      writeAlong(bestMiddle, way, up, width, text, lettering);
      best.boxes.forEach(ground::mark);
    }
  }

  private static List<Box> boxesAlong(Vec2 middle, Vec2 way, double width, double size) {
    int n = Math.max(1, (int) Math.ceil(width / size));
    boolean straight = Math.abs(way.x()) < 0.02 || Math.abs(way.y()) < 0.02;
    if (straight) {
      boolean level = Math.abs(way.x()) > 0.5;
      return List.of(
          Box.around(middle, level ? width + 0.6 : size + 0.2, level ? size + 0.2 : width + 0.6));
    }
    var boxes = new ArrayList<Box>();
    for (int i = 0; i < n; i++) {
      Vec2 at = middle.plus(way.times(((i + 0.5) / n - 0.5) * width));
      boxes.add(Box.around(at, 1.15 * size, 1.15 * size));
    }
    return boxes;
  }

  private void writeAlong(
      Vec2 middle, Vec2 way, Vec2 up, double width, String text, Lettering lettering) {
    double size = lettering.size();
    Vec2 half = way.times(width / 2 + 0.3);
    Vec2 rise = up.times(0.5 * size);
    on.fill(
        List.of(
            List.of(
                middle.minus(half).minus(rise),
                middle.plus(half).minus(rise),
                middle.plus(half).plus(rise),
                middle.minus(half).plus(rise))),
        Tone.WHITE);
    Vec2 base = middle.minus(up.times(Lettering.CAPITAL * size / 2));
    on.text(base, text, lettering.centred(), Math.toDegrees(Math.atan2(-way.y(), way.x())));
  }

  private void write(Box box, List<String> text, Lettering lettering, double line) {
    on.fill(List.of(box.ring()), Tone.WHITE);
    ground.mark(box);
    double y = box.top() + PAD + (line + Lettering.CAPITAL * lettering.size()) / 2;
    for (String t : text) {
      on.text(new Vec2(box.centre().x(), y), t, lettering.centred(), 0);
      y += line;
    }
  }

  /** A thin line from the mark to its label, where they do not touch. */
  private void lead(Vec2 point, double radius, Box box) {
    Vec2 end = box.clamp(point);
    double gap = end.distance(point) - radius;
    if (gap > 2) {
      Vec2 start = point.plus(end.minus(point).unit().times(radius + 0.2));
      on.line(List.of(start, end), false, Pen.THIN);
      keepOff(List.of(start, end), 8);
    }
  }
}
