package org.coatrun.shared.rules;

import org.coatrun.shared.units.Length;

/** Rounding of thickness up to a step that can be measured. */
public enum Rounding {
  SIXTEENTH_INCH("up to 1/16 in", 0.0254 / 16),
  MILLIMETRE("up to 1 mm", 0.001),
  NONE("not rounded", 0);

  /** A thickness this close above a step counts as that step: a billionth of a step. */
  private static final double SLACK = 1e-9;

  private final String word;
  private final double metres;

  Rounding(String word, double metres) {
    this.word = word;
    this.metres = metres;
  }

  /** In plain English, for reports. */
  public String word() {
    return word;
  }

  /** The least whole number of steps that is not under {@code thickness}. */
  public Length up(Length thickness) {
    if (this == NONE) {
      return thickness;
    }
    double steps = Math.ceil(thickness.metres() / metres - SLACK);
    return Length.ofMetres(steps * metres);
  }
}
