package org.coatrun.cli.drawing;

import java.util.EnumSet;
import java.util.Set;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Surface;

/**
 * Where the layers of one drawing meet: surface, view, labels, and what the legend must explain.
 */
final class PlanCanvas {

  private final Surface on;
  private final View view;
  private final Box area;
  private final Labels labels;
  private final Symbols symbols;
  private final Set<LegendItem> used = EnumSet.noneOf(LegendItem.class);

  PlanCanvas(Surface on, View view, Box area) {
    this.on = on;
    this.view = view;
    this.area = area;
    this.labels = new Labels(on, area.grown(-1));
    this.symbols = new Symbols(on);
  }

  Surface on() {
    return on;
  }

  View view() {
    return view;
  }

  Box area() {
    return area;
  }

  Labels labels() {
    return labels;
  }

  Symbols symbols() {
    return symbols;
  }

  /** Notes that something stands on the sheet. */
  void used(LegendItem item) {
    used.add(item);
  }

  /** What stands on the sheet, in the order of the legend. */
  Set<LegendItem> used() {
    return used;
  }
}
