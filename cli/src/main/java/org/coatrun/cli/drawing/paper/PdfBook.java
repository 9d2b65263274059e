package org.coatrun.cli.drawing.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.coatrun.cli.console.Plain;
import org.coatrun.shared.shape.Vec2;

/**
 * A PDF of several sheets, its text embedded and searchable. It carries no clock: the same sheets
 * give the same bytes.
 */
public final class PdfBook implements AutoCloseable {

  static final double POINTS = 72 / 25.4;

  private static final double MARGIN = 10;

  private final PDDocument document = new PDDocument();
  private static final String NOTE =
      "A question mark stands for a letter that the typeface of this file lacks; storeys so named go"
          + " by their number from the lowest. The SVG sheets have every name.";

  private final PDFont font;
  private final Map<String, String> standIns;

  /**
   * An empty book.
   *
   * @param standIns what is written in place of names that the typeface cannot show
   */
  public PdfBook(String title, Map<String, String> standIns) throws IOException {
    this.standIns = Map.copyOf(standIns);
    // In place of the moment of writing, from which the file's identity would be made.
    document.setDocumentId(0L);
    document.getDocumentInformation().setTitle(Plain.text(title));
    document.getDocumentInformation().setProducer("Coatrun");
    font = PDType0Font.load(document, Typeface.open(), true);
  }

  /** Puts a sheet behind those there are. */
  public void add(Paper paper, Recording sheet) throws IOException {
    var size = new PDRectangle((float) (paper.width() * POINTS), (float) (paper.height() * POINTS));
    PDPage page = new PDPage(size);
    document.addPage(page);
    try (PdfPage on = new PdfPage(document, page, font, paper.height(), standIns)) {
      sheet.replay(on);
      if (on.lacksLetters()) {
        on.text(new Vec2(MARGIN, paper.height() - MARGIN / 2), NOTE, Lettering.plain(2.2), 0);
      }
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  /** Writes the whole document; nothing can be added afterwards. */
  public void writeTo(OutputStream out) throws IOException {
    document.save(out);
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
