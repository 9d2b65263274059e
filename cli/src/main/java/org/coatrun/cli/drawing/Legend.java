package org.coatrun.cli.drawing;

import java.util.List;
import java.util.Set;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Lettering;
import org.coatrun.cli.drawing.paper.Surface;
import org.coatrun.shared.shape.Vec2;

/** The lower part of the panel: legend and cautions, standing on the title block. */
final class Legend {

  private static final double ROW = 5;
  private static final double SAMPLE = 10;
  private static final double GAP = 2;

  private Legend() {}

  /**
   * Draws both at the foot of the panel.
   *
   * @return the level at which they begin
   */
  static double draw(Surface on, Box panel, Set<LegendItem> items, List<String> cautions) {
    double below = GAP + Panel.headingHeight() + Panel.height(cautions, panel) + 2;
    double legend = Panel.headingHeight() + ROW * items.size();
    double top = panel.bottom() - below - legend - 6;
    Panel text = new Panel(on, new Box(panel.left(), top, panel.right(), panel.bottom()));
    text.heading("LEGEND");
    for (LegendItem item : items) {
      Vec2 at = new Vec2(text.left() + SAMPLE - 3.5, text.y() + ROW / 2);
      item.sample(on, at);
      on.text(
          new Vec2(text.left() + SAMPLE + 5, at.y() + 0.85),
          item.words(),
          Lettering.plain(Panel.SIZE),
          0);
      text.gap(ROW);
    }
    text.gap(GAP);
    text.heading("CAUTIONS");
    cautions.forEach(text::paragraph);
    return top;
  }
}
