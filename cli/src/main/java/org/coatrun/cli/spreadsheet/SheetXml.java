package org.coatrun.cli.spreadsheet;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.coatrun.cli.output.PlainNumber;
import org.coatrun.cli.output.Repeated;

/**
 * Writes one sheet. Cells stand one after the other without saying where they are, which the
 * standard allows (ECMA-376 part 1, 18.3.1.4) and which halves the file.
 */
final class SheetXml {

  private static final String NAMESPACE =
      "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

  private static final String PRESERVE = " xml:space=\"preserve\">";

  private static final byte[] CELL = XmlOutput.bytes("<c");
  private static final byte[] TEXT = XmlOutput.bytes(" t=\"inlineStr\"><is><t");
  private static final byte[] TEXT_END = XmlOutput.bytes("</t></is></c>");
  private static final byte[] VALUE = XmlOutput.bytes("><v>");
  private static final byte[] VALUE_END = XmlOutput.bytes("</v></c>");
  private static final byte[] END = XmlOutput.bytes("/>");

  private final XmlOutput out;
  private final Sheet sheet;
  private final List<Repeated<Object, byte[]>> columns = new ArrayList<>();
  private int row;
  private int widest;

  private SheetXml(OutputStream out, Sheet sheet) {
    this.out = new XmlOutput(out);
    this.sheet = sheet;
  }

  /**
   * Writes the sheet.
   *
   * @throws IllegalArgumentException where it has more rows than a sheet can hold
   */
  static void write(OutputStream out, Sheet sheet, boolean first) throws IOException {
    new SheetXml(out, sheet).write(first);
  }

  private void write(boolean first) throws IOException {
    out.put(WorkbookXml.HEAD + "<worksheet xmlns=\"" + NAMESPACE + "\">");
    out.put("<sheetPr><pageSetUpPr fitToPage=\"1\"/></sheetPr>");
    view(first);
    columns();
    out.put("<sheetData>");
    rows();
    out.put("</sheetData>");
    if (sheet.filtered() && row > sheet.header()) {
      String to = Sheet.cell(row, Math.max(1, widest));
      out.put("<autoFilter ref=\"A" + sheet.header() + ":" + to + "\"/>");
    }
    out.put("<pageSetup orientation=\"landscape\" fitToWidth=\"1\" fitToHeight=\"0\"/>");
    out.put("</worksheet>");
    out.flush();
  }

  private void view(boolean first) throws IOException {
    out.put("<sheetViews><sheetView workbookViewId=\"0\"" + (first ? " tabSelected=\"1\">" : ">"));
    if (sheet.header() > 0) {
      out.put(
          "<pane ySplit=\"%d\" topLeftCell=\"A%d\" activePane=\"bottomLeft\" state=\"frozen\"/>"
              .formatted(sheet.header(), sheet.header() + 1));
    }
    out.put("</sheetView></sheetViews>");
  }

  private void columns() throws IOException {
    if (sheet.widths().isEmpty()) {
      return;
    }
    out.put("<cols>");
    for (int i = 0; i < sheet.widths().size(); i++) {
      out.put(
          "<col min=\"%d\" max=\"%d\" width=\"%d\" customWidth=\"1\"/>"
              .formatted(i + 1, i + 1, sheet.widths().get(i)));
    }
    out.put("</cols>");
  }

  /** Row by row as they come: an iterator over streams joined together would hold all of them. */
  private void rows() throws IOException {
    try (Stream<List<Cell>> rows = sheet.rows().stream()) {
      rows.forEach(
          cells -> {
            try {
              row(cells);
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
          });
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private void row(List<Cell> cells) throws IOException {
    if (++row > Sheet.MOST_ROWS) {
      throw new IllegalArgumentException("more rows than a sheet can hold: " + sheet.name());
    }
    widest = Math.max(widest, cells.size());
    out.put("<row r=\"" + row + "\">");
    int end = filled(cells);
    for (int i = 0; i < end; i++) {
      cell(cells.get(i), i);
    }
    out.put("</row>");
  }

  /** Cells up to the last that holds or shows something. */
  private static int filled(List<Cell> cells) {
    int end = cells.size();
    while (end > 0 && cells.get(end - 1) instanceof Cell.Blank b && b.style() == Style.PLAIN) {
      end--;
    }
    return end;
  }

  private void cell(Cell cell, int column) throws IOException {
    out.put(CELL);
    if (cell.style() != Style.PLAIN) {
      out.put(" s=\"" + cell.style().number() + "\"");
    }
    if (cell instanceof Cell.Text t) {
      out.put(TEXT).put(xml(t.text(), column)).put(TEXT_END);
    } else if (cell instanceof Cell.Value n) {
      out.put(VALUE).put(xml(n.value(), column)).put(VALUE_END);
    } else if (cell instanceof Cell.Formula f) {
      out.put("><f>").put(XmlText.escaped(f.formula())).put("</f><v>");
      out.put(PlainNumber.of(f.value())).put(VALUE_END);
    } else {
      out.put(END);
    }
  }

  private byte[] xml(Object content, int column) {
    while (columns.size() <= column) {
      columns.add(new Repeated<>(said -> XmlOutput.bytes(xml(said))));
    }
    return columns.get(column).of(content);
  }

  private static String xml(Object content) {
    if (content instanceof BigDecimal number) {
      return PlainNumber.of(number);
    }
    String text = (String) content;
    return (isStripped(text) ? ">" : PRESERVE) + XmlText.cell(text);
  }

  /** Whether a text stays what it is where blanks are not held to matter. */
  private static boolean isStripped(String text) {
    return !text.isEmpty()
        && text.charAt(0) > ' '
        && text.charAt(text.length() - 1) > ' '
        && text.indexOf('\n') < 0
        && text.indexOf("  ") < 0;
  }
}
