package org.coatrun.cli.drawing;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Lettering;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.cli.drawing.paper.Surface;
import org.coatrun.shared.line.FloorCheck;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.shape.Vec2;

/** Names of floors on the left of a section, and on its right a row of facts for each. */
final class SectionRows {

  static final double LEFT = 46;
  static final double RIGHT = 96;

  private static final double SIZE = 2.2;
  private static final double SPACING = 3.3;
  private static final double[] STOPS = {4, 26, 45, 65};

  private final Surface on;
  private final DrawingJob job;
  private final Box area;
  private final Measure measure;

  SectionRows(Surface on, DrawingJob job, Box area) {
    this.on = on;
    this.job = job;
    this.area = area;
    this.measure = new Measure(job.units());
  }

  /**
   * Writes all rows.
   *
   * @param levels on paper, from the lowest floor up
   */
  void write(List<Double> levels, Box building) {
    List<Double> rows = spread(levels);
    row(area.top() + 6, List.of("Set-ups", "Hose in all", "Pipe", "Standpipe"), true);
    for (int f = 0; f < levels.size(); f++) {
      double y = rows.get(f);
      if (y < area.top() + 8) {
        on.text(
            new Vec2(area.left() + 3, area.top() + 6),
            "and " + (levels.size() - f) + " floors above",
            Lettering.plain(SIZE),
            0);
        return;
      }
      FloorPlan floor = job.plan().floors().get(f);
      leader(building.left(), levels.get(f), area.left() + LEFT - 3, y);
      leader(building.right(), levels.get(f), area.right() - RIGHT + 3, y);
      name(floor, y);
      row(y + 0.75, facts(floor), false);
    }
  }

  private void name(FloorPlan floor, double y) {
    String elevation = measure.elevation(floor.outline().elevation());
    double right = area.left() + LEFT - 3.5;
    on.text(new Vec2(right, y + 0.75), elevation, Lettering.plain(SIZE).toTheLeft(), 0);
    String name = Panel.cut(floor.outline().storey(), LEFT - 24, SIZE);
    on.text(new Vec2(area.left() + 2, y + 0.75), name, Lettering.bold(SIZE), 0);
  }

  private void row(double y, List<String> cells, boolean bold) {
    for (int i = 0; i < cells.size(); i++) {
      double x = area.right() - RIGHT + STOPS[i];
      double end = i + 1 < STOPS.length ? STOPS[i + 1] - 1 : RIGHT - 2;
      String text = Panel.cut(cells.get(i), end - STOPS[i], SIZE);
      on.text(new Vec2(x, y), text, new Lettering(SIZE, bold, Lettering.Align.LEFT), 0);
    }
  }

  private List<String> facts(FloorPlan floor) {
    if (floor.check().isEmpty()) {
      return List.of(floor.cells().isEmpty() ? "no work" : "no line");
    }
    FloorCheck c = floor.check().get();
    String standpipe = c.standpipe().isEmpty() ? "not required" : "required";
    return List.of(
        numbers(floor.setUps()), measure.length(c.flexible()), measure.length(c.pipe()), standpipe);
  }

  /** {@code 3–5, 9}. */
  static String numbers(List<SetUp> setUps) {
    List<Integer> sorted = setUps.stream().map(SetUp::number).sorted().toList();
    var parts = new ArrayList<String>();
    for (int i = 0; i < sorted.size(); ) {
      int j = i;
      while (j + 1 < sorted.size() && sorted.get(j + 1) == sorted.get(j) + 1) {
        j++;
      }
      parts.add(i == j ? "" + sorted.get(i) : sorted.get(i) + "–" + sorted.get(j));
      i = j + 1;
    }
    return String.join(", ", parts);
  }

  /** Rows at their levels where these are far enough apart, else pushed up. */
  private static List<Double> spread(List<Double> levels) {
    var rows = new ArrayList<Double>();
    double below = Double.POSITIVE_INFINITY;
    for (double level : levels) {
      below = Math.min(level, below - SPACING);
      rows.add(below);
    }
    return rows;
  }

  private void leader(double from, double level, double end, double y) {
    double knee = end + Math.signum(from - end) * Math.min(6, Math.abs(end - from) / 2);
    on.line(
        List.of(new Vec2(from, level), new Vec2(knee, level), new Vec2(end, y)), false, Pen.HATCH);
  }
}
