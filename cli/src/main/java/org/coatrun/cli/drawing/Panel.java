package org.coatrun.cli.drawing;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Lettering;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.cli.drawing.paper.Surface;
import org.coatrun.cli.drawing.paper.Typeface;
import org.coatrun.shared.shape.Vec2;

/** Writes downwards in a column of a sheet. */
final class Panel {

  /** Size of its type, and distance of its lines. */
  static final double SIZE = 2.4;

  static final double LINE = 3.3;

  private static final double INSET = 3;
  private static final double VALUES = 26;

  private final Surface on;
  private final Box box;
  private double y;

  Panel(Surface on, Box box) {
    this.on = on;
    this.box = box;
    this.y = box.top() + INSET;
  }

  /** The height of a heading. */
  static double headingHeight() {
    return LINE + 2.2;
  }

  /** How many lines a text takes in a column of this width. */
  static double height(List<String> texts, Box box) {
    return texts.stream().mapToInt(t -> wrap(t, box.width() - 2 * INSET, SIZE).size()).sum() * LINE;
  }

  double left() {
    return box.left() + INSET;
  }

  double right() {
    return box.right() - INSET;
  }

  double y() {
    return y;
  }

  /** How many lines are left above a level. */
  int linesAbove(double level) {
    return (int) Math.floor((level - y) / LINE + 1e-6);
  }

  void gap(double height) {
    y += height;
  }

  void heading(String text) {
    y += 1.2;
    on.text(new Vec2(left(), y + 2.2), text, Lettering.bold(SIZE + 0.2), 0);
    y += LINE + 0.2;
    on.line(List.of(new Vec2(left(), y - 0.4), new Vec2(right(), y - 0.4)), false, Pen.THIN);
    y += 0.8;
  }

  /** One line, smaller where it would not fit, and cut off where it still does not. */
  void fitted(String text, double size) {
    double room = right() - left();
    double fitting = size;
    while (fitting > 2.4 && Typeface.get().width(text, fitting) > room) {
      fitting -= 0.2;
    }
    y += size;
    on.text(new Vec2(left(), y), cut(text, room, fitting), Lettering.bold(fitting), 0);
    y += 0.35 * size;
  }

  void paragraph(String text) {
    for (String line : wrap(text, right() - left(), SIZE)) {
      on.text(new Vec2(left(), base()), line, Lettering.plain(SIZE), 0);
      y += LINE;
    }
  }

  void pair(String name, String value) {
    on.text(new Vec2(left(), base()), name, Lettering.plain(SIZE), 0);
    for (String line : wrap(value, right() - left() - VALUES, SIZE)) {
      on.text(new Vec2(left() + VALUES, base()), line, Lettering.plain(SIZE), 0);
      y += LINE;
    }
  }

  /** A name with a line to write on by hand. */
  void blank(String name) {
    on.text(new Vec2(left(), base()), name, Lettering.plain(SIZE), 0);
    Vec2 end = new Vec2(right() - 14, base() + 0.4);
    on.line(List.of(new Vec2(left() + VALUES, end.y()), end), false, Pen.THIN);
    y += LINE;
  }

  /** One line of a table: cells at their stops, each cut off before the next. */
  void row(List<String> cells, double[] stops, boolean bold) {
    for (int i = 0; i < cells.size(); i++) {
      double from = left() + stops[i];
      double to = i + 1 < stops.length ? left() + stops[i + 1] - 1 : right();
      Lettering lettering = new Lettering(SIZE, bold, Lettering.Align.LEFT);
      on.text(new Vec2(from, base()), cut(cells.get(i), to - from, SIZE), lettering, 0);
    }
    y += LINE;
  }

  private double base() {
    return y + 0.75 * SIZE;
  }

  /** The text, or its beginning and an ellipsis where it is wider than the room. */
  static String cut(String text, double room, double size) {
    if (Typeface.get().width(text, size) <= room) {
      return text;
    }
    int[] points = text.codePoints().toArray();
    int n = points.length;
    while (n > 0 && Typeface.get().width(new String(points, 0, n) + "…", size) > room) {
      n--;
    }
    return new String(points, 0, n) + "…";
  }

  /** The text in lines no wider than the room; a word that is wider still is cut off. */
  static List<String> wrap(String text, double room, double size) {
    var lines = new ArrayList<String>();
    String line = "";
    for (String word : text.trim().split("\\s+")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && Typeface.get().width(longer, size) > room) {
        lines.add(cut(line, room, size));
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(cut(line, room, size));
    return lines;
  }
}
