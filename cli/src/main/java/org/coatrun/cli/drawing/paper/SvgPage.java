package org.coatrun.cli.drawing.paper;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.coatrun.cli.console.Plain;
import org.coatrun.shared.shape.Vec2;

/** One sheet as SVG of its real size: no script, nothing fetched from elsewhere. */
public final class SvgPage implements Surface {

  /** Bold is written as plain letters with a line around them, as a part of their size. */
  static final double BOLDER = 0.025;

  private final Paper paper;
  private final String title;
  private final StringBuilder body = new StringBuilder();
  private final Set<Pen> pens = EnumSet.noneOf(Pen.class);

  public SvgPage(Paper paper, String title) {
    this.paper = paper;
    this.title = title;
  }

  /** Writes the whole document. */
  public void writeTo(Appendable out) throws IOException {
    String w = number(paper.width());
    String h = number(paper.height());
    out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
        .append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + w + "mm\" height=\"" + h)
        .append("mm\" viewBox=\"0 0 " + w + " " + h + "\">\n")
        .append("<title>" + escaped(title) + "</title>\n")
        .append("<style>\n" + styles() + "</style>\n")
        .append("<rect width=\"" + w + "\" height=\"" + h + "\" fill=\"#ffffff\"/>\n")
        .append(body)
        .append("</svg>\n");
  }

  @Override
  public void line(List<Vec2> points, boolean closed, Pen pen) {
    pens.add(pen);
    body.append(closed ? "<polygon class=\"" : "<polyline class=\"")
        .append(pen.key())
        .append("\" points=\"")
        .append(points.stream().map(SvgPage::pair).collect(Collectors.joining(" ")))
        .append("\"/>\n");
  }

  @Override
  public void fill(List<List<Vec2>> rings, Tone tone) {
    body.append("<path fill-rule=\"evenodd\" fill=\"").append(tone.hex()).append("\" d=\"");
    for (List<Vec2> ring : rings) {
      body.append('M')
          .append(ring.stream().map(SvgPage::pair).collect(Collectors.joining("L")))
          .append('Z');
    }
    body.append("\"/>\n");
  }

  @Override
  public void disc(Vec2 centre, double radius, Pen pen, Tone tone) {
    pens.add(pen);
    body.append("<circle class=\"").append(pen.key()).append("\" style=\"fill:").append(tone.hex());
    attribute("\" cx", centre.x());
    attribute(" cy", centre.y());
    attribute(" r", radius);
    body.append("/>\n");
  }

  @Override
  public void text(Vec2 at, String text, Lettering lettering, double turn) {
    if (text.isBlank()) {
      return;
    }
    body.append("<text class=\"").append(lettering.bold() ? "bold" : "plain").append('"');
    attribute(" x", at.x());
    attribute(" y", at.y());
    attribute(" font-size", lettering.size());
    if (lettering.bold()) {
      attribute(" stroke-width", BOLDER * lettering.size());
    }
    switch (lettering.align()) {
      case LEFT -> {}
      case CENTRE -> body.append(" text-anchor=\"middle\"");
      case RIGHT -> body.append(" text-anchor=\"end\"");
    }
    // The width of the typeface, so that another one takes no more room.
    attribute(" textLength", Typeface.get().width(text, lettering.size()));
    body.append(" lengthAdjust=\"spacingAndGlyphs\"");
    if (turn != 0) {
      body.append(" transform=\"rotate(").append(number(-turn)).append(' ');
      body.append(number(at.x())).append(' ').append(number(at.y())).append(")\"");
    }
    body.append('>').append(escaped(text)).append("</text>\n");
  }

  private String styles() {
    var css = new StringBuilder();
    css.append("text{font-family:").append(Typeface.FAMILIES).append(";fill:#000000}\n");
    css.append(".bold{stroke:#000000}\n");
    for (Pen pen : pens) {
      css.append('.').append(pen.key()).append("{fill:none;stroke-linejoin:round;stroke:");
      css.append(pen.white() ? Tone.WHITE.hex() : Tone.BLACK.hex());
      css.append(";stroke-width:").append(number(pen.width()));
      if (!pen.dashes().isEmpty()) {
        css.append(";stroke-dasharray:");
        css.append(pen.dashes().stream().map(SvgPage::number).collect(Collectors.joining(",")));
      }
      css.append("}\n");
    }
    return css.toString();
  }

  private void attribute(String name, double value) {
    body.append(name).append("=\"").append(number(value)).append('"');
  }

  private static String pair(Vec2 p) {
    return number(p.x()) + "," + number(p.y());
  }

  /** To a thousandth of a millimetre. */
  private static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static String escaped(String text) {
    var safe = new StringBuilder();
    Plain.text(text).codePoints().forEach(c -> safe.append(escaped(c)));
    return safe.toString();
  }

  // XML has no place for the two last code points of the first plane, not even escaped.
  private static String escaped(int codePoint) {
    return switch (codePoint) {
      case '<' -> "&lt;";
      case '>' -> "&gt;";
      case '&' -> "&amp;";
      case '"' -> "&quot;";
      case 0xFFFE, 0xFFFF -> "?";
      default -> Character.toString(codePoint);
    };
  }
}
