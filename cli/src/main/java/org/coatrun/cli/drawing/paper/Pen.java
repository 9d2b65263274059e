package org.coatrun.cli.drawing.paper;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The lines of a drawing. Weight and dashes alone tell them apart, so that a black-and-white print
 * says all; the weights step by about the square root of two.
 */
public enum Pen {
  /** Border of the sheet. */
  BORDER(0.7),
  /** Rules of tables, symbols, leaders. */
  THIN(0.18),
  /** Hatches. */
  HATCH(0.13),
  /** Edge of the slab. */
  PLATE(0.5),
  /** Outline of walls, openings and columns. */
  OUTLINE(0.25),
  /** Levels, and what lies beyond the section. */
  LEVEL(0.18, 6, 1, 1, 1),
  /** Keep-outs. */
  KEEP_OUT(0.35, 1.2, 0.8),
  /** Where ground is assumed to end. */
  GROUND(0.25, 4, 1.2, 0.4, 1.2),
  /** Room kept for something. */
  ROOM(0.25, 2.5, 1),
  /** Steel overhead that is sprayed from this floor. */
  STEEL(0.18, 3, 0.8, 0.5, 0.8),
  /** How far the hose reaches. */
  REACH(0.5, 0.5, 1.3),
  /** Hose to the farthest place of a set-up. */
  HOSE(0.6, 2.4, 0.9),
  /** Hose to the other places of a set-up. */
  HOSE_OTHER(0.15, 1, 1),
  /** Standpipe: its two edges; {@link #PIPE_CORE} goes over it. */
  PIPE(1.4),
  /** The white inside of standpipe. */
  PIPE_CORE(0.7),
  /** Symbols of machine, riser and outlet. */
  SYMBOL(0.35);

  private final double width;

  @SuppressWarnings("ImmutableEnumChecker") // the list cannot be changed
  private final List<Double> dashes;

  Pen(double width, double... dashes) {
    this.width = width;
    this.dashes = Arrays.stream(dashes).boxed().toList();
  }

  /** Its width in millimetres. */
  public double width() {
    return width;
  }

  /** Lengths drawn and left out by turns, in millimetres; empty for a full line. */
  public List<Double> dashes() {
    return dashes;
  }

  /** Whether it draws white. */
  public boolean white() {
    return this == PIPE_CORE;
  }

  /** Its name in files: {@code hose-other}. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
