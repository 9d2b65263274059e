package org.coatrun.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.coatrun.cli.Program.Run;
import org.coatrun.shared.listing.Listing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever rests on the invented listing says so: each file, each sheet, the screen. */
class DemonstrationMarkIT {

  private static final Path JOB = Program.ROOT.resolve("test-models/harbour-office.job.yaml");

  /** Lists of elements name the listing in each line instead. */
  private static final List<String> BY_LINE = List.of("members.csv", "decks.csv");

  @TempDir private Path folder;

  @Test
  void everyOutputOfARunWithTheInventedListingIsMarked() throws Exception {
    Path plan = folder.resolve("plan");
    Run run = Program.run("plan", Program.DEMO, "--job", JOB, "--out", plan);
    assertThat(run.exitCode()).describedAs(run.err()).isZero();
    assertThat(run.out()).contains(Listing.DEMONSTRATION);
    requireMarked(plan);

    Path judged = folder.resolve("judged");
    Path sheet = plan.resolve("inspection.csv");
    Run readings = Program.run("readings", sheet, "--out", judged);
    assertThat(readings.exitCode()).describedAs(readings.err()).isZero();
    assertThat(readings.out()).contains(Listing.DEMONSTRATION);
    requireMarked(judged);
  }

  @Test
  void whatRestsOnNoListingIsNotMarked() throws Exception {
    Path job = Files.writeString(folder.resolve("job.yaml"), "building: {type: I-B}\n");
    Path out = folder.resolve("plain");
    Run run = Program.run("takeoff", Program.DEMO, "--job", job, "--out", out);
    assertThat(run.exitCode()).describedAs(run.err()).isZero();
    assertThat(run.out()).doesNotContain("DEMONSTRATION");
    for (Path file : files(out)) {
      assertThat(text(file)).as(file.toString()).doesNotContain("DEMONSTRATION");
    }
  }

  private static void requireMarked(Path out) throws IOException {
    for (Path file : files(out)) {
      String name = file.getFileName().toString();
      if (name.endsWith(".xlsx")) {
        requireEachSheet(file);
      } else if (BY_LINE.contains(name)) {
        assertThat(text(file)).as(name).contains("DEMO-15 (DEMONSTRATION)");
      } else if (name.endsWith(".csv") && !name.equals("findings.csv")) {
        assertThat(text(file).lines().skip(1))
            .as(name)
            .allMatch(line -> line.contains(Listing.DEMONSTRATION));
      } else {
        assertThat(text(file).replaceAll("\\s+", " ")).as(name).contains(Listing.DEMONSTRATION);
      }
    }
  }

  private static void requireEachSheet(Path file) throws IOException {
    try (Workbook book = new XSSFWorkbook(Files.newInputStream(file))) {
      for (Sheet sheet : book) {
        StringBuilder text = new StringBuilder();
        sheet.forEach(row -> row.forEach(cell -> text.append(cell).append('\n')));
        assertThat(text.toString()).as(sheet.getSheetName()).contains("DEMONSTRATION");
      }
    }
  }

  private static List<Path> files(Path out) throws IOException {
    try (Stream<Path> files = Files.list(out)) {
      return files.sorted().toList();
    }
  }

  private static String text(Path file) throws IOException {
    String name = file.getFileName().toString();
    if (name.endsWith(".pdf")) {
      try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
        return new PDFTextStripper().getText(pdf);
      }
    }
    String text = new String(Files.readAllBytes(file), UTF_8);
    return name.endsWith(".html") ? unpacked(text) : text;
  }

  /** What the page holds packed. */
  private static String unpacked(String page) {
    Matcher packed = Pattern.compile("H4sI[A-Za-z0-9+/=]+").matcher(page);
    return packed
        .results()
        .map(found -> gunzip(Base64.getDecoder().decode(found.group())))
        .collect(Collectors.joining("\n"));
  }

  private static String gunzip(byte[] bytes) {
    try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
      return new String(in.readAllBytes(), UTF_8);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
