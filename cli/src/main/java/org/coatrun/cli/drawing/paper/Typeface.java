package org.coatrun.cli.drawing.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.coatrun.cli.console.Plain;

/**
 * The one typeface of the drawings: Liberation Sans, as it comes with PDFBox. It has the Latin,
 * Greek and Cyrillic letters; its widths are those of the sans-serif that printers have.
 */
public final class Typeface {

  /** In SVG, what stands in for it where it is not installed has the same widths. */
  public static final String FAMILIES = "'Liberation Sans',Arimo,Arial,Helvetica,sans-serif";

  private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  /** What cannot be shown is taken to be as wide as it is high. */
  private static final double UNKNOWN = 1;

  private static final Typeface ONE = new Typeface();

  private final TrueTypeFont font;
  private final CmapLookup letters;
  private final double unitsPerEm;

  private Typeface() {
    try {
      font = open();
      letters = font.getUnicodeCmapLookup();
      unitsPerEm = font.getUnitsPerEm();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The typeface. */
  public static Typeface get() {
    return ONE;
  }

  /** A font file of its own for a document, which may take parts of it; without ligatures. */
  static TrueTypeFont open() throws IOException {
    try (InputStream in = TTFParser.class.getResourceAsStream(FILE)) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in));
      font.setEnableGsub(false);
      return font;
    }
  }

  /** The width of one line of text, in the measure of {@code size}. */
  public double width(String text, double size) {
    return Plain.text(text).codePoints().mapToDouble(this::width).sum() * size;
  }

  /**
   * The text with every character that the typeface lacks put in plainer letters, or as a question
   * mark.
   */
  public String shown(String text) {
    var shown = new StringBuilder();
    Plain.text(text).codePoints().forEach(c -> shown.append(shown(c)));
    return shown.toString();
  }

  /** Whether every letter of the text can be shown, if in plainer letters. */
  public boolean shows(String text) {
    return !shown(Plain.text(text).replace("?", "")).contains("?");
  }

  private String shown(int codePoint) {
    String letter = Character.toString(codePoint);
    if (has(codePoint)) {
      return letter;
    }
    String plainer = Normalizer.normalize(letter, Normalizer.Form.NFKD);
    var kept = new StringBuilder();
    plainer.codePoints().filter(this::has).forEach(kept::appendCodePoint);
    return kept.isEmpty() ? "?" : kept.toString();
  }

  private double width(int codePoint) {
    return has(codePoint) ? advance(codePoint) : Math.max(UNKNOWN, width(shown(codePoint)));
  }

  private double width(String known) {
    return known.codePoints().mapToDouble(this::advance).sum();
  }

  private boolean has(int codePoint) {
    return letters.getGlyphId(codePoint) != 0;
  }

  private double advance(int codePoint) {
    try {
      return font.getAdvanceWidth(letters.getGlyphId(codePoint)) / unitsPerEm;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
