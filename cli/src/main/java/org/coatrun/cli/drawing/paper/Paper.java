package org.coatrun.cli.drawing.paper;

import java.util.List;

/**
 * Sizes of sheets, lying. Source: ISO 216 (A series), ASME Y14.1 (B to D), from memory.
 *
 * @see #metric()
 * @see #inch()
 */
public enum Paper {
  A3("A3", 420, 297),
  A2("A2", 594, 420),
  A1("A1", 841, 594),
  B_INCH("11 x 17 in", 431.8, 279.4),
  C_INCH("17 x 22 in", 558.8, 431.8),
  D_INCH("22 x 34 in", 863.6, 558.8);

  private final String words;
  private final double width;
  private final double height;

  Paper(String words, double width, double height) {
    this.words = words;
    this.width = width;
    this.height = height;
  }

  /** The metric sizes, the smallest first. */
  public static List<Paper> metric() {
    return List.of(A3, A2, A1);
  }

  /** The inch sizes, the smallest first. */
  public static List<Paper> inch() {
    return List.of(B_INCH, C_INCH, D_INCH);
  }

  /** What the trade calls it. */
  public String words() {
    return words;
  }

  /** In millimetres. */
  public double width() {
    return width;
  }

  /** In millimetres. */
  public double height() {
    return height;
  }
}
