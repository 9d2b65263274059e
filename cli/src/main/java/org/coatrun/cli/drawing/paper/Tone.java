package org.coatrun.cli.drawing.paper;

/** How dark an area is filled. */
public enum Tone {
  WHITE(1),
  LIGHT(0.88),
  MEDIUM(0.62),
  BLACK(0);

  private final double grey;

  Tone(double grey) {
    this.grey = grey;
  }

  /** From 0, black, to 1, white. */
  public double grey() {
    return grey;
  }

  /** The same as a hexadecimal colour: {@code #9e9e9e}. */
  public String hex() {
    int level = (int) Math.round(255 * grey);
    return String.format("#%1$02x%1$02x%1$02x", level);
  }
}
