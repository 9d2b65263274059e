package org.coatrun.cli.drawing.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.coatrun.shared.shape.Vec2;

/** Keeps what is drawn, so that a sheet is laid out once and put on several surfaces alike. */
public final class Recording implements Surface {

  private final List<Consumer<Surface>> marks = new ArrayList<>();

  @Override
  public void line(List<Vec2> points, boolean closed, Pen pen) {
    List<Vec2> kept = List.copyOf(points);
    marks.add(s -> s.line(kept, closed, pen));
  }

  @Override
  public void fill(List<List<Vec2>> rings, Tone tone) {
    List<List<Vec2>> kept = rings.stream().map(List::copyOf).toList();
    marks.add(s -> s.fill(kept, tone));
  }

  @Override
  public void disc(Vec2 centre, double radius, Pen pen, Tone tone) {
    marks.add(s -> s.disc(centre, radius, pen, tone));
  }

  @Override
  public void text(Vec2 at, String text, Lettering lettering, double turn) {
    marks.add(s -> s.text(at, text, lettering, turn));
  }

  /** Draws all of it again, in the same order. */
  public void replay(Surface on) {
    marks.forEach(m -> m.accept(on));
  }
}
