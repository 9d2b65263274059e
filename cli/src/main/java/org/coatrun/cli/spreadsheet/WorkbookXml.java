package org.coatrun.cli.spreadsheet;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The small parts of a workbook's package, after ECMA-376 parts 1 and 2. */
final class WorkbookXml {

  static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";

  private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
  private static final String OFFICE =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

  private static final String THIN = " style=\"thin\"";

  private WorkbookXml() {}

  static String contentTypes(int sheets) {
    return HEAD
        + "<Types xmlns=\""
        + PACKAGE
        + "content-types\"><Default Extension=\"rels\" ContentType=\""
        + "application/vnd.openxmlformats-package.relationships+xml\"/>"
        + override("/xl/workbook.xml", "sheet.main")
        + override("/xl/styles.xml", "styles")
        + numbered(sheets, i -> override("/xl/worksheets/sheet" + i + ".xml", "worksheet"))
        + "</Types>";
  }

  private static String override(String part, String type) {
    return "<Override PartName=\"" + part + "\" ContentType=\"" + TYPE + type + "+xml\"/>";
  }

  static String packageRelations() {
    return relations(relation(1, "officeDocument", "xl/workbook.xml"));
  }

  static String workbookRelations(int sheets) {
    return relations(
        numbered(sheets, i -> relation(i, "worksheet", "worksheets/sheet" + i + ".xml"))
            + relation(sheets + 1, "styles", "styles.xml"));
  }

  private static String relations(String all) {
    return HEAD
        + "<Relationships xmlns=\""
        + PACKAGE
        + "relationships\">"
        + all
        + "</Relationships>";
  }

  private static String relation(int id, String type, String target) {
    return "<Relationship Id=\"rId%d\" Type=\"%s/%s\" Target=\"%s\"/>"
        .formatted(id, OFFICE, type, target);
  }

  /** Programs work all formulas out when they open it, whatever values stand in it. */
  static String workbook(List<Sheet> sheets) {
    return HEAD
        + "<workbook xmlns=\""
        + MAIN
        + "\" xmlns:r=\""
        + OFFICE
        + "\"><bookViews><workbookView/></bookViews><sheets>"
        + numbered(
            sheets.size(),
            i ->
                "<sheet name=\"%s\" sheetId=\"%d\" r:id=\"rId%d\"/>"
                    .formatted(XmlText.escaped(sheets.get(i - 1).name()), i, i))
        + "</sheets><calcPr calcId=\"191029\" fullCalcOnLoad=\"1\"/></workbook>";
  }

  static String styles() {
    return HEAD
        + "<styleSheet xmlns=\""
        + MAIN
        + "\"><numFmts count=\"2\"><numFmt numFmtId=\"164\" formatCode=\"#,##0.0\"/>"
        + "<numFmt numFmtId=\"165\" formatCode=\"#,##0.000\"/></numFmts>"
        + "<fonts count=\"4\">"
        + font("", 11)
        + font("<b/>", 11)
        + font("<b/>", 14)
        + "<font><sz val=\"11\"/><color rgb=\"FF0000C0\"/><name val=\"Calibri\"/></font></fonts>"
        + "<fills count=\"4\"><fill><patternFill patternType=\"none\"/></fill>"
        + "<fill><patternFill patternType=\"gray125\"/></fill>"
        + fill("FFE3E8EE")
        + fill("FFFFF8DC")
        + "</fills><borders count=\"4\">"
        + border("", "", "")
        + border("", "", THIN)
        + border("", THIN, "")
        + border(THIN, THIN, THIN)
        + "</borders><cellStyleXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\""
        + " borderId=\"0\"/></cellStyleXfs><cellXfs count=\""
        + Style.values().length
        + "\">"
        + Stream.of(Style.values()).map(Style::xf).collect(Collectors.joining())
        + "</cellXfs><cellStyles count=\"1\"><cellStyle name=\"Normal\" xfId=\"0\""
        + " builtinId=\"0\"/></cellStyles></styleSheet>";
  }

  private static String font(String weight, int size) {
    return "<font>" + weight + "<sz val=\"" + size + "\"/><name val=\"Calibri\"/></font>";
  }

  private static String fill(String colour) {
    return "<fill><patternFill patternType=\"solid\"><fgColor rgb=\"%s\"/></patternFill></fill>"
        .formatted(colour);
  }

  private static String border(String sides, String top, String bottom) {
    return "<border><left%s/><right%s/><top%s/><bottom%s/><diagonal/></border>"
        .formatted(sides, sides, top, bottom);
  }

  private static String numbered(int count, IntFunction<String> each) {
    return IntStream.rangeClosed(1, count).mapToObj(each).collect(Collectors.joining());
  }
}
