package org.coatrun.cli.drawing;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.cli.report.UnitSystem;

/**
 * A scale of drawing.
 *
 * @param words as it stands in the title block
 * @param ratio how many times larger the building is
 */
record Scale(String words, double ratio) {

  private static final List<Scale> US =
      List.of(
          new Scale("1/4\" = 1'-0\"", 48),
          new Scale("3/16\" = 1'-0\"", 64),
          new Scale("1/8\" = 1'-0\"", 96),
          new Scale("3/32\" = 1'-0\"", 128),
          new Scale("1/16\" = 1'-0\"", 192),
          new Scale("1\" = 20'", 240),
          new Scale("1\" = 30'", 360),
          new Scale("1\" = 40'", 480),
          new Scale("1\" = 50'", 600),
          new Scale("1\" = 60'", 720),
          new Scale("1\" = 100'", 1200),
          new Scale("1\" = 200'", 2400));

  private static final int[] METRIC = {50, 100, 200, 250, 500, 1000, 2000};

  /** The usual scales, the largest drawing first, and beyond them as many as are ever needed. */
  static List<Scale> of(UnitSystem units) {
    var scales = new ArrayList<Scale>();
    if (units == UnitSystem.US) {
      scales.addAll(US);
    } else {
      for (int ratio : METRIC) {
        scales.add(metric(ratio));
      }
    }
    for (double ratio = 5000; ratio < 1e15; ratio *= 2) {
      scales.add(metric(ratio));
    }
    return scales;
  }

  /** Millimetres on paper for one metre. */
  double perMetre() {
    return 1000 / ratio;
  }

  private static Scale metric(double ratio) {
    return new Scale(Measure.format("1:%.0f", ratio), ratio);
  }
}
