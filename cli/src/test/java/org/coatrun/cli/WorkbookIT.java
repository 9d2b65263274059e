package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.coatrun.cli.Program.Run;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The workbook of the packaged program, read back and worked out by an independent library (Apache
 * POI).
 */
class WorkbookIT {

  private static final Path JOB = Program.ROOT.resolve("test-models/harbour-office.job.yaml");
  private static final double ROUNDING = 1e-6;

  @TempDir private static Path demo;

  @TempDir private Path home;

  @BeforeAll
  static void takeOffTheDemonstrationBuilding() throws Exception {
    Run run = Program.run("takeoff", Program.DEMO, "--job", JOB, "--out", demo);
    assertThat(run.exitCode()).describedAs(run.err()).isZero();
  }

  @Test
  void hasASheetForEachMatter() throws Exception {
    try (Workbook book = open(demo)) {
      assertThat(IntStream.range(0, book.getNumberOfSheets()).mapToObj(book::getSheetName))
          .containsExactly(
              "Summary",
              "By floor",
              "By section",
              "Members",
              "Decks",
              "Rates",
              "Material",
              "Labour",
              "Money",
              "Programme",
              "Inspection",
              "Findings",
              "Basis",
              "Cautions");
    }
  }

  /** Each cell of each line is that of takeoff.json: numbers as numbers, text as text. */
  @Test
  void linesAreThoseOfTheJsonFile() throws Exception {
    JsonNode json = TakeoffResult.read(demo).json();
    try (Workbook book = open(demo)) {
      for (String kind : List.of("members", "decks", "findings")) {
        Sheet sheet =
            book.getSheet(
                kind.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + kind.substring(1));
        List<String> names = texts(sheet.getRow(0));
        assertThat(sheet.getLastRowNum()).isEqualTo(json.path(kind).size());
        for (int i = 0; i < json.path(kind).size(); i++) {
          requireLine(names, sheet.getRow(i + 1), json.path(kind).get(i));
        }
      }
    }
  }

  private static void requireLine(List<String> names, Row row, JsonNode line) {
    List<String> keys = new ArrayList<>();
    line.fieldNames().forEachRemaining(keys::add);
    assertThat(names).containsSubsequence(keys);
    for (int column = 0; column < names.size(); column++) {
      JsonNode expected = line.path(names.get(column));
      Cell cell = row.getCell(column, Row.MissingCellPolicy.RETURN_BLANK_AS_NULL);
      if (expected.isNumber()) {
        assertThat(cell.getNumericCellValue()).isEqualTo(expected.doubleValue());
      } else if (expected.isNull() || expected.asText().isEmpty()) {
        assertThat(cell).isNull();
      } else {
        assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
        assertThat(cell.getStringCellValue()).isEqualTo(expected.asText());
      }
    }
  }

  /** Only cells that the program itself made hold formulas, and each gives the value it carries. */
  @Test
  void formulasGiveTheValuesThatStandInThem() throws Exception {
    Set<String> sheets = new TreeSet<>();
    try (Workbook book = open(demo)) {
      Map<Cell, Double> written = new LinkedHashMap<>();
      formulas(book).forEach(cell -> written.put(cell, cell.getNumericCellValue()));
      book.getCreationHelper().createFormulaEvaluator().evaluateAll();
      assertThat(written).hasSizeGreaterThan(200);
      written.forEach(
          (cell, value) -> {
            sheets.add(cell.getSheet().getSheetName());
            assertThat(cell.getNumericCellValue())
                .describedAs(cell.getSheet().getSheetName() + " " + cell.getAddress())
                .isCloseTo(value, within(ROUNDING * Math.max(1, Math.abs(value) / 1000)));
          });
    }
    assertThat(sheets)
        .containsExactlyInAnyOrder(
            "Summary",
            "By floor",
            "By section",
            "Rates",
            "Material",
            "Labour",
            "Money",
            "Programme");
  }

  @Test
  void sumsAreThoseOfTheJsonFile() throws Exception {
    JsonNode json = TakeoffResult.read(demo).json();
    try (Workbook book = open(demo)) {
      Sheet floors = book.getSheet("By floor");
      int row = rowOf(floors, "All");
      assertThat(floors.getRow(row).getCell(12).getNumericCellValue())
          .isEqualTo(json.at("/totals/members/exposed_m2").doubleValue());
      JsonNode bid = json.path("bid");
      assertThat(total(book)).isEqualTo(bid.at("/money/total").decimalValue().doubleValue());
      requireSummary(book, "bags", bid.at("/material/bags").doubleValue());
      requireSummary(book, "crew hours", bid.at("/labour/crew_hours").doubleValue());
      requireSummary(book, "working days", bid.at("/programme/working_days").doubleValue());
      requireSummary(book, "total, USD", bid.at("/money/total").doubleValue());
    }
  }

  /** A changed rate changes the total to what the program makes of a job file with that rate. */
  @Test
  void changedRatesChangeTheTotal() throws Exception {
    Path changed = home.resolve("changed");
    Path job = Files.writeString(home.resolve("job.yaml"), changedJob());
    Run run = Program.run("takeoff", Program.DEMO, "--job", job, "--out", changed);
    assertThat(run.exitCode()).describedAs(run.err()).isZero();
    JsonNode bid = TakeoffResult.read(changed).json().path("bid");
    try (Workbook book = open(demo)) {
      double before = total(book);
      change(book, "prices.bag", 21.25);
      change(book, "prices.person-hour", 71.5);
      change(book, "prices.overhead", 0.125);
      change(book, "material.waste.beam", 0.2);
      change(book, "labour.rates.beam", 380);
      change(book, "labour.crew", 6);
      change(book, "machine.rate", 5);
      book.getCreationHelper().createFormulaEvaluator().evaluateAll();

      requireSummary(book, "bags", bid.at("/material/bags").doubleValue());
      requireSummary(book, "crew hours", bid.at("/labour/crew_hours").doubleValue());
      requireSummary(book, "working days", bid.at("/programme/working_days").doubleValue());
      // Trucks stand as planned: the one item that does not follow.
      double trucks = bid.at("/programme/trucks").doubleValue();
      change(book, rowOf(book.getSheet("Money"), "deliveries"), trucks);
      book.getCreationHelper().createFormulaEvaluator().evaluateAll();
      assertThat(total(book))
          .isNotEqualTo(before)
          .isCloseTo(bid.at("/money/total").doubleValue(), within(0.005));
      assertThat(bid.at("/labour/waiting_h").doubleValue()).isPositive();
    }
  }

  /** The job of the demonstration building with other rates. */
  private static String changedJob() throws IOException {
    return replaced(
        Files.readString(JOB),
        Map.of(
            "  bag: 13.80", "  bag: 21.25",
            "  person-hour: 62", "  person-hour: 71.5",
            "  overhead: 11 %", "  overhead: 12.5 %",
            "  density: 15 pcf", "  density: 15 pcf\n  waste: {beam: 20 %}",
            "  crew: 5", "  crew: 6\n  rates: {beam: 380 bf/h}",
            "  rate: 24 bags/h", "  rate: 5 bags/h"));
  }

  private static String replaced(String text, Map<String, String> others) {
    String all = text;
    for (Map.Entry<String, String> other : others.entrySet()) {
      String next = all.replace(other.getKey(), other.getValue());
      assertThat(next).describedAs(other.getKey()).isNotEqualTo(all);
      all = next;
    }
    return all;
  }

  @Test
  void givesTheSameBytesAgain() throws Exception {
    Path again = home.resolve("again");
    Program.run("takeoff", Program.DEMO, "--job", JOB, "--out", again);
    assertThat(again.resolve("takeoff.xlsx")).hasSameBinaryContentAs(demo.resolve("takeoff.xlsx"));
  }

  private static void requireSummary(Workbook book, String what, double value) {
    Sheet summary = book.getSheet("Summary");
    assertThat(summary.getRow(rowOf(summary, what)).getCell(1).getNumericCellValue())
        .describedAs(what)
        .isCloseTo(value, within(0.005));
  }

  private static double total(Workbook book) {
    Sheet money = book.getSheet("Money");
    double total = money.getRow(rowOf(money, "total")).getCell(4).getNumericCellValue();
    return BigDecimal.valueOf(total).setScale(2, java.math.RoundingMode.HALF_UP).doubleValue();
  }

  /** The first row whose first cell holds a text. */
  private static int rowOf(Sheet sheet, String text) {
    for (Row row : sheet) {
      Cell cell = row.getCell(0);
      if (cell != null
          && cell.getCellType() == CellType.STRING
          && cell.getStringCellValue().equals(text)) {
        return row.getRowNum();
      }
    }
    throw new AssertionError(text + " is not on sheet " + sheet.getSheetName());
  }

  private static void change(Workbook book, String key, double value) {
    for (Row row : book.getSheet("Rates")) {
      Cell name = row.getCell(3);
      if (name != null && name.getStringCellValue().equals(key)) {
        row.getCell(1).setCellValue(value);
        return;
      }
    }
    throw new AssertionError("no such rate: " + key);
  }

  private static void change(Workbook book, int row, double amount) {
    book.getSheet("Money").getRow(row).getCell(1).setCellValue(amount);
  }

  private static List<Cell> formulas(Workbook book) {
    List<Cell> cells = new ArrayList<>();
    for (Sheet sheet : book) {
      for (Row row : sheet) {
        row.forEach(cell -> add(cells, cell));
      }
    }
    return cells;
  }

  private static void add(List<Cell> cells, Cell cell) {
    if (cell.getCellType() == CellType.FORMULA) {
      cells.add(cell);
    }
  }

  private static List<String> texts(Row row) {
    List<String> texts = new ArrayList<>();
    row.forEach(cell -> texts.add(cell.getStringCellValue()));
    return texts;
  }

  private static Workbook open(Path folder) throws IOException {
    return new XSSFWorkbook(Files.newInputStream(folder.resolve("takeoff.xlsx")));
  }
}
