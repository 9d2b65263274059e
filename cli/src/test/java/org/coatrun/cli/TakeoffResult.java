package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;

/** The files of a takeoff, read back. */
public record TakeoffResult(
    List<Map<String, String>> members, List<Map<String, String>> decks, JsonNode json) {

  private static final List<String> PARTS =
      List.of("inside_m2", "ends_m2", "holes_m2", "covered_m2", "exposed_m2");

  // Six numbers of the file, each rounded to nine decimals.
  private static final double ROUNDING = 3.1e-9;

  public static TakeoffResult read(Path folder) throws IOException {
    return new TakeoffResult(
        csv(folder.resolve("members.csv")),
        csv(folder.resolve("decks.csv")),
        new JsonMapper().readTree(folder.resolve("takeoff.json").toFile()));
  }

  static List<Map<String, String>> csv(Path file) throws IOException {
    try (var rows =
        new CsvMapper()
            .readerForMapOf(String.class)
            .with(CsvSchema.emptySchema().withHeader())
            .<Map<String, String>>readValues(file.toFile())) {
      return rows.readAll();
    }
  }

  static List<String> header(Path file) throws IOException {
    return List.of(Files.readAllLines(file).get(0).split(",", -1));
  }

  /** Each line is counted, left out or unresolved, and the surface of what counts adds up. */
  public void requireLedger() {
    List<Map<String, String>> lines = new ArrayList<>(members);
    lines.addAll(decks);
    lines.forEach(TakeoffResult::requireLine);
    for (String kind : List.of("members", "decks")) {
      JsonNode totals = json.path("totals").path(kind);
      requireSum(totals, StreamSupport.stream(json.path(kind).spliterator(), false).toList());
      assertThat(totals.path("all").asInt())
          .isEqualTo(kind.equals("members") ? members.size() : decks.size());
    }
  }

  /** Sums by storey, section and role are those of the lines. */
  void requireGroups() {
    for (String groups : List.of("members_by_storey", "members_by_section", "members_by_role")) {
      requireSum(
          json.path("totals").path("members"),
          StreamSupport.stream(json.path(groups).spliterator(), false).toList());
    }
  }

  double total(String column) {
    return json.path("totals").path("members").path(column).asDouble();
  }

  private static void requireLine(Map<String, String> line) {
    if (line.get("status").equals("counted")) {
      double body = number(line, "body_m2");
      double parts = PARTS.stream().mapToDouble(part -> number(line, part)).sum();
      assertThat(parts)
          .describedAs(line.toString())
          .isCloseTo(body, within(ROUNDING + 1e-12 * body));
      assertThat(number(line, "exposed_m2")).describedAs(line.toString()).isNotNegative();
    } else {
      assertThat(line.get("status")).isIn("left out", "unresolved");
      assertThat(line.get("reason")).describedAs(line.toString()).isNotBlank();
      assertThat(line.get("body_m2")).describedAs(line.toString()).isEmpty();
    }
  }

  private static void requireSum(JsonNode totals, List<JsonNode> addends) {
    double counts =
        totals.path("counted").asInt()
            + totals.path("left_out").asInt()
            + totals.path("unresolved").asInt();
    assertThat(counts).isEqualTo(totals.path("all").asInt());
    for (String column : List.of("body_m2", "exposed_m2", "covered_m2", "weight_kg")) {
      double sum = addends.stream().mapToDouble(line -> line.path(column).asDouble()).sum();
      assertThat(totals.path(column)).isNotInstanceOf(MissingNode.class);
      assertThat(totals.path(column).asDouble())
          .describedAs(column)
          .isCloseTo(sum, within(1e-6 * Math.max(1, addends.size()) + 1e-12 * Math.abs(sum)));
    }
  }

  private static double number(Map<String, String> line, String column) {
    return Double.parseDouble(line.get(column));
  }
}
