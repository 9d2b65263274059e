package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.coatrun.cli.Program.Run;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A spreadsheet program (LibreOffice, without a screen) opens the workbook and works its formulas
 * out. Skipped with a word where there is none.
 */
class OfficeIT {

  private static final Path JOB = Program.ROOT.resolve("test-models/harbour-office.job.yaml");

  /** As CSV: commas, quotes where needed, UTF-8, numbers in full, all sheets. */
  private static final String AS_CSV =
      "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1";

  private static final long MINUTES = 4;

  @TempDir private static Path demo;

  @TempDir private Path home;

  @BeforeAll
  static void takeOffTheDemonstrationBuilding() throws Exception {
    assumeTrue(
        office().isPresent(),
        "skipped: no soffice is on the PATH; install libreoffice-calc-nogui or the like");
    Run run = Program.run("takeoff", Program.DEMO, "--job", JOB, "--out", demo);
    assertThat(run.exitCode()).describedAs(run.err()).isZero();
  }

  @Test
  void opensEachSheetAndFindsNoFault() throws Exception {
    JsonNode json = TakeoffResult.read(demo).json();
    Path sheets = convert(demo.resolve("takeoff.xlsx"));

    try (var files = Files.list(sheets)) {
      List<Path> all = files.toList();
      assertThat(all).hasSize(14);
      for (Path sheet : all) {
        assertThat(sheet)
            .content()
            .doesNotContain("Err:5", "#REF!", "#NAME?", "#VALUE!", "#DIV/0!");
      }
    }
    List<Map<String, String>> members = TakeoffResult.csv(sheets.resolve("takeoff-Members.csv"));
    assertThat(members).hasSize(json.path("members").size());
    double exposed =
        members.stream()
            .map(line -> line.get("exposed_m2"))
            .filter(cell -> !cell.isEmpty())
            .mapToDouble(Double::parseDouble)
            .sum();
    assertThat(BigDecimal.valueOf(exposed).setScale(5, RoundingMode.HALF_UP))
        .isEqualTo(
            json.at("/totals/members/exposed_m2").decimalValue().setScale(5, RoundingMode.HALF_UP));
    assertThat(total(sheets)).isEqualByComparingTo(json.at("/bid/money/total").decimalValue());
  }

  /** The price of a bag is changed, and the values beside formulas are taken out of the file. */
  @Test
  void worksTheTotalOutFromAChangedPrice() throws Exception {
    JsonNode money = TakeoffResult.read(demo).json().at("/bid/money");
    JsonNode bags = money.at("/items/0");
    assertThat(bags.path("key").asText()).isEqualTo("prices.bag");
    BigDecimal price = new BigDecimal("21.25");
    BigDecimal cost =
        money
            .path("cost")
            .decimalValue()
            .subtract(bags.path("cost").decimalValue())
            .add(price.multiply(bags.path("amount").decimalValue()));
    BigDecimal overhead = cents(cost.multiply(new BigDecimal("0.11")));
    BigDecimal profit = cents(cost.add(overhead).multiply(new BigDecimal("0.06")));

    Path changed = home.resolve("changed.xlsx");
    String cell = "<v>" + bags.path("price").asText() + "</v>";
    rewrite(demo.resolve("takeoff.xlsx"), changed, cell, "<v>" + price + "</v>");

    assertThat(total(convert(changed))).isEqualByComparingTo(cost.add(overhead).add(profit));
  }

  private static BigDecimal cents(BigDecimal value) {
    return value.setScale(2, RoundingMode.HALF_UP);
  }

  private static BigDecimal total(Path sheets) throws IOException {
    try (var files = Files.list(sheets)) {
      Path money =
          files.filter(file -> file.toString().endsWith("-Money.csv")).findFirst().orElseThrow();
      String line =
          Files.readAllLines(money).stream()
              .filter(l -> l.startsWith("total,"))
              .findFirst()
              .orElseThrow();
      return cents(new BigDecimal(line.split(",", -1)[4]));
    }
  }

  private static void rewrite(Path from, Path to, String old, String now) throws IOException {
    int changed = 0;
    try (ZipFile zip = new ZipFile(from.toFile());
        OutputStream file = Files.newOutputStream(to);
        ZipOutputStream out = new ZipOutputStream(file)) {
      for (ZipEntry entry : zip.stream().toList()) {
        String text = new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
        boolean rates = text.contains(">Rates and prices<");
        if (rates) {
          assertThat(text).containsOnlyOnce(old);
          changed++;
        }
        String written = rates ? text.replace(old, now) : text;
        out.putNextEntry(new ZipEntry(entry.getName()));
        out.write(written.replaceAll("</f><v>[^<]*</v>", "</f>").getBytes(StandardCharsets.UTF_8));
      }
    }
    assertThat(changed).isOne();
  }

  /** Each sheet of a workbook as CSV, in a folder. */
  private Path convert(Path workbook) throws Exception {
    Path out = home.resolve("sheets");
    Path said = home.resolve("office.txt");
    Process process =
        new ProcessBuilder(
                office().orElseThrow().toString(),
                "-env:UserInstallation=" + home.resolve("profile").toUri(),
                "--headless",
                "--convert-to",
                AS_CSV,
                "--outdir",
                out.toString(),
                workbook.toString())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    boolean ended = process.waitFor(MINUTES, TimeUnit.MINUTES);
    process.destroyForcibly();
    assertThat(ended).describedAs("the spreadsheet program ends").isTrue();
    assertThat(process.exitValue()).describedAs(Files.readString(said)).isZero();
    return out;
  }

  private static Optional<Path> office() {
    return Arrays.stream(System.getenv("PATH").split(java.io.File.pathSeparator, -1))
        .map(folder -> Path.of(folder, "soffice"))
        .filter(Files::isExecutable)
        .findFirst();
  }
}
