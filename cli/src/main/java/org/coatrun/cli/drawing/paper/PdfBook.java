package org.coatrun.cli.drawing.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.coatrun.cli.console.Plain;

/**
 * A PDF of several sheets, its text embedded and searchable. It carries no clock: the same sheets
 * give the same bytes.
 */
public final class PdfBook implements AutoCloseable {

  static final double POINTS = 72 / 25.4;

  private final PDDocument document = new PDDocument();
  private final PDFont font;

  /** An empty book. */
  public PdfBook(String title) throws IOException {
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
    try (PdfPage on = new PdfPage(document, page, font, paper.height())) {
      sheet.replay(on);
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
