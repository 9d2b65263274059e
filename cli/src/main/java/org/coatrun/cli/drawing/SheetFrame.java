package org.coatrun.cli.drawing;

import java.util.List;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Lettering;
import org.coatrun.cli.drawing.paper.Paper;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.cli.drawing.paper.Surface;
import org.coatrun.shared.shape.Vec2;

/** Border and title block; the sheet falls into an area to draw in and a panel on its right. */
final class SheetFrame {

  private static final double MARGIN = 8;
  private static final double PANEL = 94;
  private static final double TITLE = 36;

  private SheetFrame() {}

  /** Where the building is drawn. */
  static Box drawing(Paper paper) {
    return new Box(MARGIN, MARGIN, paper.width() - MARGIN - PANEL, paper.height() - MARGIN);
  }

  /** Where facts and legend are written, above the title block. */
  static Box panel(Paper paper) {
    return new Box(
        paper.width() - MARGIN - PANEL,
        MARGIN,
        paper.width() - MARGIN,
        paper.height() - MARGIN - TITLE);
  }

  /** Draws border and title block. */
  static void draw(Surface on, Fit fit, SheetTitle title) {
    Paper paper = fit.paper();
    Box all = new Box(MARGIN, MARGIN, paper.width() - MARGIN, paper.height() - MARGIN);
    on.line(all.ring(), true, Pen.BORDER);
    double x = panel(paper).left();
    double y = panel(paper).bottom();
    on.line(List.of(new Vec2(x, all.top()), new Vec2(x, all.bottom())), false, Pen.PLATE);
    on.line(List.of(new Vec2(x, y), new Vec2(all.right(), y)), false, Pen.PLATE);
    Panel text = new Panel(on, new Box(x, y, all.right(), all.bottom()));
    text.fitted(title.building().isBlank() ? "Building without a name" : title.building(), 3.2);
    text.fitted(title.subject(), 5);
    text.gap(1);
    text.pair("Scale", fit.scale().words() + " on " + paper.words() + "; the scale bar holds");
    text.pair("Sheet", title.number() + " of " + title.of());
    text.gap(3);
    text.blank("Checked");
    on.text(
        new Vec2(all.right() - 3, all.bottom() - 2.5),
        "Coatrun",
        Lettering.plain(2.2).toTheLeft(),
        0);
  }
}
