package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.coatrun.cli.Program.Run;
import org.coatrun.testmodels.GenerateModels;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Takeoff and line of whole models as a user runs them, checked from what was written. */
class LineIT {

  private static final Path JOB = Program.ROOT.resolve("test-models/harbour-office.job.yaml");
  private static final double FOOT = 0.3048;
  private static final double NOISE = 1e-5;

  @TempDir private static Path folder;

  private static Path demo;
  private static Run run;

  @BeforeAll
  static void plan() throws Exception {
    demo = folder.resolve("demo");
    run = Program.run("plan", Program.DEMO, "--job", JOB, "--out", demo);
  }

  @Test
  void planWritesAllThatTakeoffAndLineWrite() {
    assertThat(run.err()).doesNotContain("Exception");
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).contains("Machine ", "Proven best", "To load:", "All steel");
    assertThat(
            Stream.of(
                "members.csv",
                "decks.csv",
                "takeoff.json",
                "takeoff.xlsx",
                "report.html",
                "findings.csv",
                "basis.txt",
                "line.json",
                "routes.csv",
                "floors.csv",
                "spots.csv",
                "hardware.csv",
                "moves.csv",
                "drawings.pdf",
                "section.svg",
                "plan-01-level-1.svg"))
        .allMatch(name -> Files.exists(demo.resolve(name)));
  }

  @Test
  void everyPlaceIsReachedOrNamedWithItsReason() throws IOException {
    List<Map<String, String>> routes = TakeoffResult.csv(demo.resolve("routes.csv"));
    assertThat(routes).hasSizeGreaterThan(100);
    for (Map<String, String> place : routes) {
      boolean reached = place.get("result").equals("reached");
      assertThat(place.get("reason").isEmpty()).isEqualTo(reached);
      assertThat(place.get("machine").isEmpty()).isEqualTo(!reached);
    }
    requireLimits(demo);
  }

  @Test
  void theLineCarriesAllThatTheMaterialBillHasInPlace() throws IOException {
    Map<String, String> job =
        TakeoffResult.csv(demo.resolve("material.csv")).stream()
            .filter(sum -> sum.get("by").equals("job"))
            .findFirst()
            .orElseThrow();
    double onTheLine =
        TakeoffResult.csv(demo.resolve("routes.csv")).stream()
            .mapToDouble(place -> Double.parseDouble(place.get("coating_m3")))
            .sum();
    assertThat(onTheLine).isCloseTo(Double.parseDouble(job.get("in_place_m3")), within(1e-6));
  }

  @Test
  void theDemonstrationListingIsNamedOnTheLineToo() throws IOException {
    assertThat(Files.readString(demo.resolve("line.json"))).contains("DEMONSTRATION LISTING");
    assertThat(Files.readString(demo.resolve("basis.txt"))).contains("250 ft of flexible hose");
  }

  @Test
  void theSameRunGivesTheSameBytes() throws Exception {
    Path again = folder.resolve("again");
    Program.run("plan", Program.DEMO, "--job", JOB, "--out", again);
    try (var files = Files.list(demo)) {
      for (Path file : files.toList()) {
        assertThat(again.resolve(file.getFileName())).hasSameBinaryContentAs(file);
      }
    }
  }

  @Test
  void liftShowsTheChecksAndWritesNothing() throws Exception {
    Run lift = Program.run("lift", Program.FIRST_TRY, "--units", "us");
    assertThat(lift.exitCode()).isZero();
    assertThat(lift.out()).contains("Standpipe", "At the pump, psi", "65 psi at the nozzle");
    assertThat(lift.err()).doesNotContain("Exception");
  }

  @ParameterizedTest
  @CsvSource({"hall", "l-shaped"})
  void otherBuildingsHaveLinesWithinTheLimits(String scenario) throws Exception {
    Path model = folder.resolve(scenario + ".ifc");
    GenerateModels.main(new String[] {scenario, model.toString()});
    Path out = folder.resolve(scenario);
    Run built = Program.run("line", model, "--out", out);
    assertThat(built.exitCode()).isZero();
    assertThat(built.out()).contains("Coating, m3").doesNotContain("oard feet", "bf");
    requireLimits(out);
    List<Map<String, String>> routes = TakeoffResult.csv(out.resolve("routes.csv"));
    assertThat(routes).isNotEmpty();
    for (Map<String, String> place : routes) {
      assertThat(place.get("result").equals("reached")).isEqualTo(place.get("reason").isEmpty());
    }
  }

  /**
   * A machine that lifts four storeys, in a tower of six: offered, planned, drawn, in the lists.
   */
  @Test
  void aTowerTooHighForOnePositionHasTwo() throws Exception {
    Path model = folder.resolve("tower.ifc");
    GenerateModels.main(new String[] {"tower", model.toString(), "--storeys", "6"});
    Path one = tower(model, "one", 1);
    assertThat(results(one)).containsKeys("reached", "no line");
    assertThat(Files.readString(one.resolve("findings.csv")))
        .contains("over what the machine is rated for", "allow another machine position");

    Path two = tower(model, "two", 2);
    assertThat(results(two)).containsOnlyKeys("reached");
    JsonNode line = new JsonMapper().readTree(two.resolve("line.json").toFile());
    List<String> machines = line.path("machines").findValuesAsText("name");
    assertThat(line.path("machines").findValuesAsText("floor")).contains("Level 1", "Level 5");
    String section = Files.readString(two.resolve("section.svg"));
    String moves = Files.readString(two.resolve("moves.csv"));
    String hardware = Files.readString(two.resolve("hardware.csv"));
    for (String machine : machines) {
      assertThat(section).contains("Machine " + machine);
      assertThat(moves).containsPattern("machine (at|to) " + machine + " on Level [15]\\.");
      assertThat(hardware).contains("," + machine + ",");
    }
    assertThat(Files.readString(two.resolve("plan-05-level-5.svg"))).contains("bags come up");
    assertThat(Files.readString(two.resolve("basis.txt"))).contains("Of several machine positions");
    requireLimits(two);
  }

  private static Path tower(Path model, String name, int positions) throws Exception {
    String yaml = "machine: {lift-rating: 50 ft}\nsite: {positions: " + positions + "}\n";
    Path job = Files.writeString(folder.resolve(name + ".job.yaml"), yaml);
    Path out = folder.resolve(name);
    assertThat(Program.run("line", model, "--job", job, "--out", out).exitCode()).isZero();
    return out;
  }

  private static Map<String, Long> results(Path out) throws IOException {
    return TakeoffResult.csv(out.resolve("routes.csv")).stream()
        .collect(Collectors.groupingBy(place -> place.get("result"), Collectors.counting()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "site: {machine-spots: [{name: a, at: [1 m, 1 m], storey: Attic}]} | names storey 'Attic', which has no floor",
        "line: {whip: 30 ft, flexible-hose: 20 ft} | the whip is longer than all flexible hose together",
        "line: {flexible-hoses: 20 ft} | flexible-hoses"
      })
  void aJobThatCannotBeIsOneSentence(String yaml, String sentence) throws Exception {
    Path job = Files.writeString(folder.resolve("job.yaml"), yaml);
    Path out = folder.resolve("refused");
    Run refused = Program.run("line", Program.FIRST_TRY, "--job", job, "--out", out);
    assertThat(refused.exitCode()).isEqualTo(3);
    assertThat(refused.err()).contains(sentence).doesNotContain("\tat ");
    assertThat(out).doesNotExist();
  }

  /** Limits are common practice; lines are added up anew from their legs. */
  private static void requireLimits(Path folder) throws IOException {
    JsonNode line = new JsonMapper().readTree(folder.resolve("line.json").toFile());
    for (JsonNode place : line.path("places")) {
      double flexible = 0;
      double hoseRise = 0;
      for (JsonNode leg : place.path("legs")) {
        flexible += leg.path("flexible").asBoolean() ? leg.path("laid_m").asDouble() : 0;
        if (leg.path("kind").asText().equals("riser hose")) {
          hoseRise += leg.path("taut_m").asDouble();
        }
        requireLength(leg);
      }
      assertThat(flexible).isLessThanOrEqualTo(250 * FOOT + NOISE);
      assertThat(hoseRise).isLessThanOrEqualTo(36 * FOOT + NOISE);
    }
    for (JsonNode riser : line.path("risers")) {
      boolean needed =
          riser.path("rise_m").asDouble() > 36 * FOOT + NOISE || riser.path("storeys").asInt() > 3;
      assertThat(riser.path("standpipe").asBoolean() || !needed).isTrue();
    }
  }

  /** Of a level leg: as long as its points are apart. */
  private static void requireLength(JsonNode leg) {
    String kind = leg.path("kind").asText();
    if (kind.equals("hose") || kind.equals("pipe")) {
      JsonNode path = leg.path("path");
      double length = 0;
      for (int i = 1; i < path.size(); i++) {
        double dx = path.path(i).path(0).asDouble() - path.path(i - 1).path(0).asDouble();
        double dy = path.path(i).path(1).asDouble() - path.path(i - 1).path(1).asDouble();
        length += Math.hypot(dx, dy);
      }
      assertThat(leg.path("taut_m").asDouble()).isCloseTo(length, within(1e-4));
    }
  }
}
