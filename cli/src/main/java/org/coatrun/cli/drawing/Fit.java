package org.coatrun.cli.drawing;

import java.util.List;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Paper;
import org.coatrun.cli.report.UnitSystem;

/** The paper and the scale that something is drawn on and at. */
record Fit(Paper paper, Scale scale) {

  /** A drawing at a smaller scale than this asks for larger paper, where there is any. */
  private static final double SMALLEST_GOOD = 500;

  /** Kept free around the drawing for its dimensions and labels, in millimetres. */
  static final double ROOM = 20;

  /**
   * The smallest paper on which so many metres show well, with the largest scale that fits on it.
   */
  static Fit of(UnitSystem units, double width, double height) {
    List<Paper> papers = units == UnitSystem.US ? Paper.inch() : Paper.metric();
    Fit fit = null;
    for (Paper paper : papers) {
      fit = on(paper, units, width, height);
      if (fit.scale.ratio() <= SMALLEST_GOOD) {
        return fit;
      }
    }
    return fit;
  }

  /** The largest scale at which so many metres fit on the paper. */
  static Fit on(Paper paper, UnitSystem units, double width, double height) {
    return within(paper, SheetFrame.drawing(paper).grown(-ROOM), units, width, height);
  }

  /** The largest scale at which so many metres fit into a part of the paper. */
  static Fit within(Paper paper, Box area, UnitSystem units, double width, double height) {
    List<Scale> scales = Scale.of(units);
    Scale fitting =
        scales.stream()
            .filter(s -> width * s.perMetre() <= area.width())
            .filter(s -> height * s.perMetre() <= area.height())
            .findFirst()
            .orElse(scales.get(scales.size() - 1));
    return new Fit(paper, fitting);
  }
}
