package org.coatrun.ifcimport.part21;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.coatrun.shared.finding.Finding;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Each of the real files opens and decodes without a fault, but for those listed here. */
class SampleFilesTest {

  private static final Path MODELS =
      Path.of(System.getProperty("coatrun.field.dir", "none"), "models");

  private static final String TRUNCATED = "truncated.2x3.ifc";

  /** What a file's name promises: the codes, with the lines, of the faults in it. */
  private static final Map<String, List<String>> FAULTS =
      Map.ofEntries(
          Map.entry("fail_double_comma.ifc", List.of("BAD_VALUE 8")),
          Map.entry("fail_double_semi.ifc", List.of("STRAY_TEXT 27")),
          Map.entry("fail_duplicate_id.ifc", List.of("DUPLICATE_ID 27")),
          Map.entry("fail_invalid_0.ifc", List.of("ZERO_ID 8")),
          Map.entry("fail_invalid_header_entity.ifc", List.of("BAD_HEADER 6")),
          Map.entry(
              "fail_multiple_duplicate_ids.ifc", List.of("DUPLICATE_ID 25", "DUPLICATE_ID 27")),
          Map.entry(
              "fail_multiple_wrong_header_fields.ifc", List.of("BAD_HEADER 3", "BAD_HEADER 4")),
          Map.entry("fail_no_header.ifc", List.of("BAD_HEADER 0")),
          Map.entry("fail_reverse_string.ifc", List.of("BAD_TEXT 8")),
          Map.entry("fail_too_many_header_entity_fields.ifc", List.of("BAD_HEADER 4")),
          // A byte order mark is against the standard and does no harm.
          Map.entry("fail_utf8_with_bom.ifc", List.of()),
          Map.entry("fail_utf_encoding.ifc", List.of("BAD_TEXT 8")));

  /** Records that are there by a plain count of line beginnings in each file. */
  private static final Map<String, Long> COUNTS =
      Map.of(
          "glass-roof-5178-members.2x3.ifc", 56_989L,
          "office-3-storeys.2x3.ifc", 62_930L,
          "office-4-storeys.2x3.ifc", 42_582L,
          "steel-sections-us.ifc4.ifc", 34_223L,
          "housing-steelwork.ifczip", 13_402L,
          "housing-steelwork.2x3.ifc", 13_402L);

  static Stream<Path> models() throws IOException {
    assumeTrue(Files.isDirectory(MODELS), "the real models are not beside the project");
    try (Stream<Path> all = Files.walk(MODELS, 2)) {
      return all.filter(f -> f.toString().matches(".*\\.(ifc|ifczip)")).sorted().toList().stream();
    }
  }

  @TestFactory
  Stream<DynamicTest> opensAndDecodesEachRecord() throws IOException {
    return models()
        .filter(f -> !f.endsWith(TRUNCATED))
        .map(f -> DynamicTest.dynamicTest(f.getFileName().toString(), () -> check(f)));
  }

  private static void check(Path path) {
    String name = path.getFileName().toString();
    try (StepFile file = StepFile.open(path, StepOptions.DEFAULT)) {
      assertThat(file.count()).isPositive();
      assertThat(file.header().schemas()).hasSize(1);
      List<Finding> findings = StepText.allFindings(file);
      assertThat(findings.stream().map(f -> f.code() + " " + f.line()).toList())
          .isEqualTo(FAULTS.getOrDefault(name, List.of()));
      assertThat(file.count()).isEqualTo(COUNTS.getOrDefault(name, file.count()));
      assertReferencesLead(file);
    }
  }

  private static void assertReferencesLead(StepFile file) {
    long dangling = 0;
    for (String entity : file.entityNames()) {
      for (long id : file.idsOf(entity)) {
        for (Value v : file.record(id).values()) {
          dangling += v.asRef().isPresent() && !file.contains(v.asRef().getAsLong()) ? 1 : 0;
        }
      }
    }
    boolean cut = file.findings().stream().anyMatch(f -> f.sentence().contains("#"));
    assertThat(dangling).isLessThanOrEqualTo(cut ? 2 : 0);
  }

  @Test
  void theTruncatedOneIsRefusedUnlessThatIsAccepted() throws IOException {
    models();
    Path path = MODELS.resolve(TRUNCATED);
    assertThatThrownBy(() -> StepFile.open(path, StepOptions.DEFAULT).close())
        .isInstanceOf(ModelFileException.class)
        .hasMessageContaining("truncated")
        .hasMessageContaining("line 2417");
    try (StepFile file = StepFile.open(path, StepOptions.DEFAULT.acceptingTruncated())) {
      assertThat(file.count()).isEqualTo(2409);
      assertThat(StepText.allFindings(file)).extracting(Finding::line).containsExactly(2417L);
    }
  }

  @Test
  void theEscapesReadAsTheyShould() throws IOException {
    models();
    try (StepFile file = StepFile.open(MODELS.resolve("encoding.ifc"), StepOptions.DEFAULT)) {
      assertThat(file.record(1).text(0)).contains("'a' 1m\u00b3 \u2264 5m\u00b3 \u2265 10m\u00b3");
    }
    try (StepFile file =
        StepFile.open(MODELS.resolve("newlines-in-strings.ifc"), StepOptions.DEFAULT)) {
      assertThat(file.record(323449).text(2)).contains("L4x4x3/8\nB");
    }
  }
}
