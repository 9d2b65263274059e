package org.coatrun.cli.spreadsheet;

import java.io.IOException;
import java.io.Writer;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;

/** Writes one sheet. */
final class SheetXml {

  private static final String NAMESPACE =
      "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

  private final Writer out;
  private final Sheet sheet;
  private int row;
  private int widest;

  private SheetXml(Writer out, Sheet sheet) {
    this.out = out;
    this.sheet = sheet;
  }

  /**
   * Writes the sheet.
   *
   * @throws IllegalArgumentException where it has more rows than a sheet can hold
   */
  static void write(Writer out, Sheet sheet, boolean first) throws IOException {
    new SheetXml(out, sheet).write(first);
  }

  private void write(boolean first) throws IOException {
    out.write(WorkbookXml.HEAD + "<worksheet xmlns=\"" + NAMESPACE + "\">");
    out.write("<sheetPr><pageSetUpPr fitToPage=\"1\"/></sheetPr>");
    view(first);
    columns();
    out.write("<sheetData>");
    try (Stream<List<Cell>> rows = sheet.rows().stream()) {
      for (Iterator<List<Cell>> each = rows.iterator(); each.hasNext(); ) {
        row(each.next());
      }
    }
    out.write("</sheetData>");
    if (sheet.filtered() && row > sheet.header()) {
      String to = Sheet.cell(row, Math.max(1, widest));
      out.write("<autoFilter ref=\"A" + sheet.header() + ":" + to + "\"/>");
    }
    out.write("<pageSetup orientation=\"landscape\" fitToWidth=\"1\" fitToHeight=\"0\"/>");
    out.write("</worksheet>");
  }

  private void view(boolean first) throws IOException {
    out.write(
        "<sheetViews><sheetView workbookViewId=\"0\"" + (first ? " tabSelected=\"1\">" : ">"));
    if (sheet.header() > 0) {
      out.write(
          "<pane ySplit=\"%d\" topLeftCell=\"A%d\" activePane=\"bottomLeft\" state=\"frozen\"/>"
              .formatted(sheet.header(), sheet.header() + 1));
    }
    out.write("</sheetView></sheetViews>");
  }

  private void columns() throws IOException {
    if (sheet.widths().isEmpty()) {
      return;
    }
    out.write("<cols>");
    for (int i = 0; i < sheet.widths().size(); i++) {
      out.write(
          "<col min=\"%d\" max=\"%d\" width=\"%d\" customWidth=\"1\"/>"
              .formatted(i + 1, i + 1, sheet.widths().get(i)));
    }
    out.write("</cols>");
  }

  private void row(List<Cell> cells) throws IOException {
    if (++row > Sheet.MOST_ROWS) {
      throw new IllegalArgumentException("more rows than a sheet can hold: " + sheet.name());
    }
    widest = Math.max(widest, cells.size());
    StringBuilder text = new StringBuilder(cells.size() * 40);
    text.append("<row r=\"").append(row).append("\">");
    for (int i = 0; i < cells.size(); i++) {
      cell(text, cells.get(i), Sheet.cell(row, i + 1));
    }
    out.append(text.append("</row>"));
  }

  private static void cell(StringBuilder text, Cell cell, String name) {
    if (cell instanceof Cell.Blank blank && blank.style() == Style.PLAIN) {
      return;
    }
    text.append("<c r=\"").append(name).append("\" s=\"").append(cell.style().number());
    if (cell instanceof Cell.Text t) {
      text.append("\" t=\"inlineStr\"><is><t xml:space=\"preserve\">");
      text.append(XmlText.cell(t.text())).append("</t></is></c>");
    } else if (cell instanceof Cell.Value n) {
      text.append("\"><v>").append(n.value().toPlainString()).append("</v></c>");
    } else if (cell instanceof Cell.Formula f) {
      text.append("\"><f>").append(XmlText.escaped(f.formula())).append("</f><v>");
      text.append(f.value().toPlainString()).append("</v></c>");
    } else {
      text.append("\"/>");
    }
  }
}
