package org.coatrun.cli.drawing;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Lettering;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.cli.drawing.paper.Surface;
import org.coatrun.cli.drawing.paper.Tone;
import org.coatrun.cli.drawing.paper.Typeface;
import org.coatrun.shared.shape.Vec2;

/** Remembers what is drawn, to be looked at by tests. */
final class MarksOnPaper implements Surface {

  record Line(List<Vec2> points, Pen pen) {
    double length() {
      double sum = 0;
      for (int i = 1; i < points.size(); i++) {
        sum += points.get(i - 1).distance(points.get(i));
      }
      return sum;
    }
  }

  /** A text with the box it fills; a turned one with the box around its turned corners. */
  record Text(String words, Box box, double turn) {}

  final List<Line> lines = new ArrayList<>();
  final List<Text> texts = new ArrayList<>();
  final List<Vec2> points = new ArrayList<>();

  private final double panel;

  private MarksOnPaper(double panel) {
    this.panel = panel;
  }

  static MarksOnPaper of(Sheet sheet) {
    var marks = new MarksOnPaper(SheetFrame.panel(sheet.paper()).left());
    sheet.marks().replay(marks);
    return marks;
  }

  /** Where the panel begins. */
  double panel() {
    return panel;
  }

  List<Line> lines(Pen pen) {
    return lines.stream().filter(l -> l.pen() == pen).toList();
  }

  @Override
  public void line(List<Vec2> along, boolean closed, Pen pen) {
    lines.add(new Line(along, pen));
    points.addAll(along);
  }

  @Override
  public void fill(List<List<Vec2>> rings, Tone tone) {
    rings.forEach(points::addAll);
  }

  @Override
  public void disc(Vec2 centre, double radius, Pen pen, Tone tone) {
    points.addAll(Box.around(centre, 2 * radius, 2 * radius).ring());
  }

  @Override
  public void text(Vec2 at, String text, Lettering lettering, double turn) {
    double width = Typeface.get().width(text, lettering.size());
    double left =
        switch (lettering.align()) {
          case LEFT -> 0;
          case CENTRE -> -width / 2;
          case RIGHT -> -width;
        };
    double height = Lettering.CAPITAL * lettering.size();
    double a = Math.toRadians(turn);
    Vec2 along = new Vec2(Math.cos(a), -Math.sin(a));
    Vec2 up = new Vec2(-Math.sin(a), -Math.cos(a));
    var corners = new ArrayList<Vec2>();
    for (double x : new double[] {left, left + width}) {
      for (double y : new double[] {0, height}) {
        corners.add(at.plus(along.times(x)).plus(up.times(y)));
      }
    }
    points.addAll(corners);
    texts.add(new Text(text, BuildingLayer.box(corners), turn));
  }
}
