package org.coatrun.cli.spreadsheet;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A workbook: sheets in a zip package that names neither a clock nor a person. */
public final class WorkbookFile {

  /** The package has to name a time; this one says nothing. */
  private static final LocalDateTime NO_TIME = LocalDateTime.of(2000, 1, 1, 0, 0);

  private WorkbookFile() {}

  /**
   * Writes the sheets; {@code out} stays open.
   *
   * @throws IllegalArgumentException where two sheets share a name, or one has more rows than a
   *     sheet can hold
   */
  public static void write(OutputStream out, List<Sheet> sheets) throws IOException {
    if (sheets.isEmpty() || sheets.stream().map(Sheet::name).distinct().count() < sheets.size()) {
      throw new IllegalArgumentException("a workbook needs sheets, each with its own name");
    }
    ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
    Writer text = new BufferedWriter(new OutputStreamWriter(zip, StandardCharsets.UTF_8), 1 << 16);
    part(zip, text, "[Content_Types].xml", WorkbookXml.contentTypes(sheets.size()));
    part(zip, text, "_rels/.rels", WorkbookXml.packageRelations());
    part(zip, text, "xl/workbook.xml", WorkbookXml.workbook(sheets));
    part(zip, text, "xl/_rels/workbook.xml.rels", WorkbookXml.workbookRelations(sheets.size()));
    part(zip, text, "xl/styles.xml", WorkbookXml.styles());
    for (int i = 0; i < sheets.size(); i++) {
      begin(zip, "xl/worksheets/sheet" + (i + 1) + ".xml");
      SheetXml.write(text, sheets.get(i), i == 0);
      end(zip, text);
    }
    zip.finish();
  }

  private static void part(ZipOutputStream zip, Writer text, String name, String content)
      throws IOException {
    begin(zip, name);
    text.write(content);
    end(zip, text);
  }

  private static void begin(ZipOutputStream zip, String name) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(NO_TIME);
    zip.putNextEntry(entry);
  }

  private static void end(ZipOutputStream zip, Writer text) throws IOException {
    text.flush();
    zip.closeEntry();
  }
}
