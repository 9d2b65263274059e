package org.coatrun.cli.drawing.paper;

/**
 * How text is written.
 *
 * @param size of the type, in millimetres; capitals are about 0.72 of it
 */
public record Lettering(double size, boolean bold, Align align) {

  /** Where text lies against its point. */
  public enum Align {
    LEFT,
    CENTRE,
    RIGHT
  }

  /** Capitals are this high, as a part of the size. */
  public static final double CAPITAL = 0.72;

  /** Plain text that begins at its point. */
  public static Lettering plain(double size) {
    return new Lettering(size, false, Align.LEFT);
  }

  /** Bold text that begins at its point. */
  public static Lettering bold(double size) {
    return new Lettering(size, true, Align.LEFT);
  }

  /** The same, centred on its point. */
  public Lettering centred() {
    return new Lettering(size, bold, Align.CENTRE);
  }

  /** The same, ending at its point. */
  public Lettering toTheLeft() {
    return new Lettering(size, bold, Align.RIGHT);
  }
}
