package org.coatrun.cli.spreadsheet;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import org.coatrun.cli.output.PlainNumber;

/** Writes one sheet. */
final class SheetXml {

  private static final String NAMESPACE =
      "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

  /** So much text is made into bytes at a time. */
  private static final int PORTION = 1 << 16;

  private static final String PRESERVE = " xml:space=\"preserve\">";

  private final OutputStream out;
  private final StringBuilder text = new StringBuilder(2 * PORTION);
  private final Sheet sheet;
  private final List<String> letters = new ArrayList<>();
  private final List<Written> written = new ArrayList<>();
  private int row;
  private int widest;

  private SheetXml(OutputStream out, Sheet sheet) {
    this.out = out;
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
    text.append(WorkbookXml.HEAD + "<worksheet xmlns=\"" + NAMESPACE + "\">");
    text.append("<sheetPr><pageSetUpPr fitToPage=\"1\"/></sheetPr>");
    view(first);
    columns();
    text.append("<sheetData>");
    try (Stream<List<Cell>> rows = sheet.rows().stream()) {
      for (Iterator<List<Cell>> each = rows.iterator(); each.hasNext(); ) {
        row(each.next());
      }
    }
    text.append("</sheetData>");
    if (sheet.filtered() && row > sheet.header()) {
      String to = Sheet.cell(row, Math.max(1, widest));
      text.append("<autoFilter ref=\"A" + sheet.header() + ":" + to + "\"/>");
    }
    text.append("<pageSetup orientation=\"landscape\" fitToWidth=\"1\" fitToHeight=\"0\"/>");
    text.append("</worksheet>");
    flush();
  }

  private void view(boolean first) {
    text.append(
        "<sheetViews><sheetView workbookViewId=\"0\"" + (first ? " tabSelected=\"1\">" : ">"));
    if (sheet.header() > 0) {
      text.append(
          "<pane ySplit=\"%d\" topLeftCell=\"A%d\" activePane=\"bottomLeft\" state=\"frozen\"/>"
              .formatted(sheet.header(), sheet.header() + 1));
    }
    text.append("</sheetView></sheetViews>");
  }

  private void columns() {
    if (sheet.widths().isEmpty()) {
      return;
    }
    text.append("<cols>");
    for (int i = 0; i < sheet.widths().size(); i++) {
      text.append(
          "<col min=\"%d\" max=\"%d\" width=\"%d\" customWidth=\"1\"/>"
              .formatted(i + 1, i + 1, sheet.widths().get(i)));
    }
    text.append("</cols>");
  }

  private void row(List<Cell> cells) throws IOException {
    if (++row > Sheet.MOST_ROWS) {
      throw new IllegalArgumentException("more rows than a sheet can hold: " + sheet.name());
    }
    widest = Math.max(widest, cells.size());
    text.append("<row r=\"").append(row).append("\">");
    for (int i = 0; i < cells.size(); i++) {
      cell(cells.get(i), i);
    }
    text.append("</row>");
    if (text.length() >= PORTION) {
      flush();
    }
  }

  private void flush() throws IOException {
    out.write(text.toString().getBytes(StandardCharsets.UTF_8));
    text.setLength(0);
  }

  /** The letters of a column, counted from 0. */
  private String letters(int column) {
    while (letters.size() <= column) {
      letters.add(Sheet.column(letters.size() + 1));
    }
    return letters.get(column);
  }

  private void cell(Cell cell, int column) {
    if (cell instanceof Cell.Blank blank && blank.style() == Style.PLAIN) {
      return;
    }
    text.append("<c r=\"").append(letters(column)).append(row);
    if (cell.style() != Style.PLAIN) {
      text.append("\" s=\"").append(cell.style().number());
    }
    if (cell instanceof Cell.Text t) {
      text.append("\" t=\"inlineStr\"><is><t").append(xml(t.text(), column));
      text.append("</t></is></c>");
    } else if (cell instanceof Cell.Value n) {
      text.append("\"><v>").append(PlainNumber.of(n.value())).append("</v></c>");
    } else if (cell instanceof Cell.Formula f) {
      text.append("\"><f>").append(XmlText.escaped(f.formula())).append("</f><v>");
      text.append(PlainNumber.of(f.value())).append("</v></c>");
    } else {
      text.append("\"/>");
    }
  }

  /** A text of a column and its XML. */
  private record Written(String text, String xml) {}

  /** A column mostly says what it said a row before. */
  private String xml(String content, int column) {
    while (written.size() <= column) {
      written.add(new Written("", PRESERVE));
    }
    if (!written.get(column).text().equals(content)) {
      String xml = (isStripped(content) ? ">" : PRESERVE) + XmlText.cell(content);
      written.set(column, new Written(content, xml));
    }
    return written.get(column).xml();
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
