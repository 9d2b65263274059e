package org.coatrun.cli.drawing.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.coatrun.shared.shape.Vec2;

/** One page of a PDF. Trouble with the document comes out as {@link UncheckedIOException}. */
final class PdfPage implements Surface, AutoCloseable {

  /** A quarter of a circle as a cubic curve: the arms of its control points. */
  private static final double ARM = 4.0 / 3 * (Math.sqrt(2) - 1);

  private static final double POINTS = PdfBook.POINTS;

  private final PDPageContentStream content;
  private final PDFont font;
  private final double height;
  private final Map<String, String> standIns;
  private boolean lacks;

  PdfPage(
      PDDocument document, PDPage page, PDFont font, double height, Map<String, String> standIns)
      throws IOException {
    this.standIns = standIns;
    this.content = new PDPageContentStream(document, page);
    this.font = font;
    this.height = height;
    content.setLineJoinStyle(1);
  }

  @Override
  public void line(List<Vec2> points, boolean closed, Pen pen) {
    run(
        () -> {
          use(pen);
          trace(points);
          if (closed) {
            content.closePath();
          }
          content.stroke();
        });
  }

  @Override
  public void fill(List<List<Vec2>> rings, Tone tone) {
    run(
        () -> {
          content.setNonStrokingColor((float) tone.grey());
          for (List<Vec2> ring : rings) {
            trace(ring);
            content.closePath();
          }
          content.fillEvenOdd();
        });
  }

  @Override
  public void disc(Vec2 c, double radius, Pen pen, Tone tone) {
    run(
        () -> {
          use(pen);
          content.setNonStrokingColor((float) tone.grey());
          content.moveTo(x(c.x() + radius), y(c.y()));
          Vec2 out = new Vec2(radius, 0);
          for (int quarter = 0; quarter < 4; quarter++) {
            Vec2 next = out.left();
            curve(c.plus(out).plus(next.times(ARM)), c.plus(next).plus(out.times(ARM)), next, c);
            out = next;
          }
          content.closePath();
          content.fillAndStroke();
        });
  }

  @Override
  public void text(Vec2 at, String text, Lettering lettering, double turn) {
    if (text.isBlank()) {
      return;
    }
    run(
        () -> {
          String shown = inLetters(text);
          double width = Typeface.get().width(shown, lettering.size());
          double before =
              switch (lettering.align()) {
                case LEFT -> 0;
                case CENTRE -> width / 2;
                case RIGHT -> width;
              };
          double angle = Math.toRadians(turn);
          double x = at.x() - before * Math.cos(angle);
          double y = at.y() + before * Math.sin(angle);
          write(shown, lettering, Matrix.getRotateInstance(angle, x(x), y(y)));
        });
  }

  /** Whether some text could not be written in its own letters. */
  boolean lacksLetters() {
    return lacks;
  }

  private String inLetters(String text) {
    if (Typeface.get().shows(text)) {
      return Typeface.get().shown(text);
    }
    lacks = true;
    String plain = text;
    for (Map.Entry<String, String> name : new TreeMap<>(standIns).descendingMap().entrySet()) {
      plain = plain.replace(name.getKey(), name.getValue());
    }
    return Typeface.get().shown(plain);
  }

  private void write(String shown, Lettering lettering, Matrix place) throws IOException {
    content.beginText();
    content.setFont(font, (float) (lettering.size() * POINTS));
    content.setNonStrokingColor(0f);
    content.setRenderingMode(lettering.bold() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
    if (lettering.bold()) {
      content.setStrokingColor(0f);
      content.setLineDashPattern(new float[0], 0);
      content.setLineWidth((float) (SvgPage.BOLDER * lettering.size() * POINTS));
    }
    content.setTextMatrix(place);
    content.showText(shown);
    content.endText();
  }

  private void use(Pen pen) throws IOException {
    content.setStrokingColor(pen.white() ? 1f : 0f);
    content.setLineWidth((float) (pen.width() * POINTS));
    float[] dashes = new float[pen.dashes().size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = (float) (pen.dashes().get(i) * POINTS);
    }
    content.setLineDashPattern(dashes, 0);
  }

  private void trace(List<Vec2> points) throws IOException {
    content.moveTo(x(points.get(0).x()), y(points.get(0).y()));
    for (Vec2 p : points.subList(1, points.size())) {
      content.lineTo(x(p.x()), y(p.y()));
    }
  }

  private void curve(Vec2 a, Vec2 b, Vec2 end, Vec2 centre) throws IOException {
    Vec2 to = centre.plus(end);
    content.curveTo(x(a.x()), y(a.y()), x(b.x()), y(b.y()), x(to.x()), y(to.y()));
  }

  private static float x(double millimetres) {
    return (float) (millimetres * POINTS);
  }

  private float y(double millimetres) {
    return (float) ((height - millimetres) * POINTS);
  }

  /** What may fail with the document. */
  private interface Work {
    void run() throws IOException;
  }

  private static void run(Work work) {
    try {
      work.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() throws IOException {
    content.close();
  }
}
