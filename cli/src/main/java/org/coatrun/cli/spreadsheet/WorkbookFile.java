package org.coatrun.cli.spreadsheet;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A workbook: sheets in a zip package that names neither a clock nor a person. */
public final class WorkbookFile {

  /** The package has to name a time; this one says nothing. */
  private static final LocalDateTime NO_TIME = LocalDateTime.of(2000, 1, 1, 0, 0);

  /** Packs a quarter as long as the usual level does, for a tenth more room. */
  private static final int LEVEL = 3;

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
    zip.setLevel(LEVEL);
    part(zip, "[Content_Types].xml", WorkbookXml.contentTypes(sheets.size()));
    part(zip, "_rels/.rels", WorkbookXml.packageRelations());
    part(zip, "xl/workbook.xml", WorkbookXml.workbook(sheets));
    part(zip, "xl/_rels/workbook.xml.rels", WorkbookXml.workbookRelations(sheets.size()));
    part(zip, "xl/styles.xml", WorkbookXml.styles());
    for (int i = 0; i < sheets.size(); i++) {
      begin(zip, "xl/worksheets/sheet" + (i + 1) + ".xml");
      SheetXml.write(zip, sheets.get(i), i == 0);
      zip.closeEntry();
    }
    zip.finish();
  }

  private static void part(ZipOutputStream zip, String name, String content) throws IOException {
    begin(zip, name);
    zip.write(content.getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }

  private static void begin(ZipOutputStream zip, String name) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(NO_TIME);
    zip.putNextEntry(entry);
  }
}
