package org.coatrun.cli.drawing;

import java.util.List;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Lettering;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.cli.drawing.paper.Surface;
import org.coatrun.cli.drawing.paper.Tone;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/** A bar of four equal parts in round lengths. */
final class ScaleBar {

  private static final double LONGEST_PART = 16;
  private static final int PARTS = 4;

  private ScaleBar() {}

  /** Draws the bar with its left end at a point. */
  static Box draw(Surface on, Vec2 at, View view, Measure measure) {
    double step = step(view, measure);
    double part = view.size(measure.us() ? Length.ofFeet(step).metres() : step);
    for (int i = 0; i < PARTS; i++) {
      Box box = new Box(at.x() + i * part, at.y(), at.x() + (i + 1) * part, at.y() + 1.6);
      on.fill(List.of(box.ring()), i % 2 == 0 ? Tone.BLACK : Tone.WHITE);
      on.line(box.ring(), true, Pen.THIN);
    }
    for (int i = 0; i <= PARTS; i += 2) {
      String unit = i == PARTS ? measure.us() ? " ft" : " m" : "";
      String text = Measure.format("%s%s", number(i * step), unit);
      Vec2 below = new Vec2(at.x() + i * part, at.y() + 4.4);
      on.text(below, text, Lettering.plain(2.4).centred(), 0);
    }
    return new Box(at.x() - 4, at.y() - 2, at.x() + PARTS * part + 8, at.y() + 6);
  }

  private static double step(View view, Measure measure) {
    double metres = measure.us() ? Length.ofFeet(1).metres() : 1;
    double best = 1e-3;
    for (double ten = 1e-2; ten < 1e15; ten *= 10) {
      for (double k : new double[] {1, 2, 5}) {
        best = view.size(k * ten * metres) <= LONGEST_PART ? k * ten : best;
      }
    }
    return best;
  }

  private static String number(double value) {
    return Measure.format(value == Math.rint(value) ? "%.0f" : "%.1f", value);
  }
}
