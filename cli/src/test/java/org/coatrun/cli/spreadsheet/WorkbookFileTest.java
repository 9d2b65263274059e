package org.coatrun.cli.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Read back by an independent program library (Apache POI). */
class WorkbookFileTest {

  @ParameterizedTest
  @CsvSource({"1, A", "26, Z", "27, AA", "52, AZ", "53, BA", "702, ZZ", "703, AAA", "16384, XFD"})
  void columnsHaveTheLettersOfTheStandard(int number, String letters) {
    assertThat(Sheet.column(number)).isEqualTo(letters);
  }

  /** None of them may become a formula, a link or another text. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+1",
        "-1",
        "@SUM(A1)",
        "=HYPERLINK(\"http://x\")",
        "  blanks  ",
        "two  blanks",
        "under_score",
        "<b>&amp;\"'",
        "_x0041_",
        "_x005F_x0041_",
        "a\nb",
        "007",
        "TRUE",
        "Geb\u00E4ude \uD83C\uDFD7"
      })
  void textStaysText(String text) throws IOException {
    XSSFCell cell = only(Cell.text(text));
    assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
    assertThat(cell.getStringCellValue()).isEqualTo(text);
  }

  @Test
  void whatXmlDoesNotCarryIsReplaced() throws IOException {
    assertThat(only(Cell.text("a\u0000b\u001F\uFFFE\uD800c")).getStringCellValue())
        .isEqualTo("a\uFFFDb\uFFFD\uFFFD\uFFFDc");
    assertThat(only(Cell.text("a\r\nb\rc")).getStringCellValue()).isEqualTo("a\nb\nc");
  }

  /** ECMA-376 lets a cell hold 32,767 characters. */
  @Test
  void longTextIsCut() throws IOException {
    String text = only(Cell.text("x".repeat(40_000))).getStringCellValue();
    assertThat(text).hasSize(32_767).endsWith("x...");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1.5", "123456789.123456789", "0.000000001", "100"})
  void numbersStayNumbers(String number) throws IOException {
    XSSFCell cell = only(Cell.number(new BigDecimal(number), Style.HUNDREDTH));
    assertThat(cell.getNumericCellValue()).isEqualTo(Double.parseDouble(number));
    assertThat(cell.getCellStyle().getDataFormatString()).isEqualTo("#,##0.00");
  }

  @Test
  void formulasCarryTheirValueAndAreWorkedOutToIt() throws IOException {
    List<Cell> row =
        List.of(
            Cell.number(2, Style.INPUT),
            Cell.number(3.5, Style.PLAIN),
            Cell.formula("ROUND(A1*B1,2)&\"\"=\"7\"", BigDecimal.ONE, Style.PLAIN),
            Cell.formula("A1*B1", new BigDecimal("7"), Style.SUM_HUNDREDTH));
    try (XSSFWorkbook read = read(List.of(sheet("One", row)))) {
      XSSFCell product = read.getSheetAt(0).getRow(0).getCell(3);
      assertThat(product.getCellFormula()).isEqualTo("A1*B1");
      assertThat(product.getNumericCellValue()).isEqualTo(7);
      read.getSheetAt(0).getRow(0).getCell(0).setCellValue(4);
      read.getCreationHelper().createFormulaEvaluator().evaluateAll();
      assertThat(product.getNumericCellValue()).isEqualTo(14);
      assertThat(read.getForceFormulaRecalculation()).isTrue();
    }
  }

  @Test
  void sheetsKeepNamesOrderHeaderAndFilter() throws IOException {
    Sheet table =
        new Sheet(
            "Tab & \"x\"",
            List.of(10, 20),
            1,
            true,
            () -> Stream.of(List.of(Cell.text("a"), Cell.text("b")), List.of(Cell.text("c"))));
    try (XSSFWorkbook read = read(List.of(sheet("First", List.of()), table))) {
      assertThat(read.getSheetName(1)).isEqualTo("Tab & \"x\"");
      XSSFSheet sheet = read.getSheetAt(1);
      assertThat(sheet.getPaneInformation().getHorizontalSplitPosition()).isEqualTo((short) 1);
      assertThat(sheet.getCTWorksheet().getAutoFilter().getRef()).isEqualTo("A1:B2");
      assertThat(sheet.getColumnWidth(1)).isEqualTo(20 * 256);
    }
  }

  @Test
  void theBytesNameNoClock() throws IOException {
    List<Sheet> sheets = List.of(sheet("One", List.of(Cell.text("x"))));
    byte[] bytes = bytes(sheets);
    assertThat(bytes(sheets)).isEqualTo(bytes);
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        assertThat(entry.getTimeLocal().getYear()).isEqualTo(2000);
        assertThat(new String(zip.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8))
            .doesNotContain("created", "modified");
      }
    }
  }

  @Test
  void refusesWhatNoProgramOpens() {
    Sheet one = sheet("One", List.of());
    assertThatThrownBy(() -> bytes(List.of())).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> bytes(List.of(one, one))).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> sheet("a/b", List.of())).isInstanceOf(IllegalArgumentException.class);
    Sheet tall =
        new Sheet(
            "Tall",
            List.of(),
            0,
            false,
            () -> Collections.nCopies(Sheet.MOST_ROWS + 1, List.<Cell>of()).stream());
    assertThatThrownBy(() -> WorkbookFile.write(OutputStream.nullOutputStream(), List.of(tall)))
        .hasMessageContaining("more rows than a sheet can hold");
  }

  private static XSSFCell only(Cell cell) throws IOException {
    try (XSSFWorkbook read = read(List.of(sheet("One", List.of(cell))))) {
      return read.getSheetAt(0).getRow(0).getCell(0);
    }
  }

  private static Sheet sheet(String name, List<Cell> row) {
    return new Sheet(name, List.of(), 0, false, () -> Stream.of(row));
  }

  private static XSSFWorkbook read(List<Sheet> sheets) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(bytes(sheets)));
  }

  private static byte[] bytes(List<Sheet> sheets) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WorkbookFile.write(out, sheets);
    return out.toByteArray();
  }
}
