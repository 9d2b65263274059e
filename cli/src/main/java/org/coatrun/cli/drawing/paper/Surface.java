package org.coatrun.cli.drawing.paper;

import java.util.List;
import org.coatrun.shared.shape.Vec2;

/**
 * What can be drawn on: millimetres from the upper left corner of the sheet, x to the right and y
 * down. Later marks cover earlier ones.
 */
public interface Surface {

  /** Draws a line through the points, of which there are at least two. */
  void line(List<Vec2> points, boolean closed, Pen pen);

  /** Fills what lies inside an odd number of the rings. */
  void fill(List<List<Vec2>> rings, Tone tone);

  /** A filled circle with a line around it. */
  void disc(Vec2 centre, double radius, Pen pen, Tone tone);

  /**
   * One line of text.
   *
   * @param at on the base line: its left end, middle or right end, as the lettering says
   * @param turn in degrees, against the clock
   */
  void text(Vec2 at, String text, Lettering lettering, double turn);
}
