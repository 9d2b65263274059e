package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.coatrun.cli.Program.Run;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The packaged program takes off each real file beside the project; none may make it fail. Of all
 * their steel elements and decks at most one in a hundred is unresolved, each with its code.
 */
class FieldModelsIT {

  private static final Path MODELS = Path.of(System.getProperty("coatrun.field.dir"), "models");

  @TempDir private Path home;

  private int measured;
  private int unresolved;

  @Test
  void takesOffOrRefusesEachModel() throws Exception {
    assumeTrue(Files.isDirectory(MODELS), "skipped: the real models are not beside the project");
    List<Path> models = models();
    assertThat(models).hasSizeGreaterThan(30);
    for (Path model : models) {
      takesOffOrRefuses(model);
    }
    assertThat(measured).isGreaterThan(5000);
    assertThat(unresolved).isLessThanOrEqualTo((measured + unresolved) / 100);
  }

  private void takesOffOrRefuses(Path model) throws Exception {
    Path out = home.resolve(model.getFileName() + ".out");
    Run run = Program.run("takeoff", model, "--out", out, "--accept-truncated");

    assertThat(run.exitCode()).describedAs(model + ": " + run.err()).isIn(0, 3, 5);
    assertThat(run.err()).describedAs(model.toString()).doesNotContain("Exception", "\tat ");
    if (run.exitCode() == 3) {
      assertThat(run.err().lines()).describedAs(model.toString()).hasSize(1);
      assertThat(out).doesNotExist();
      assertThat(model.getFileName().toString()).startsWith("fail_");
    } else {
      TakeoffResult result = TakeoffResult.read(out);
      result.requireLedger();
      count(result.members(), out);
      count(result.decks(), out);
    }
  }

  private void count(List<Map<String, String>> lines, Path out) throws IOException {
    List<Map<String, String>> findings = TakeoffResult.csv(out.resolve("findings.csv"));
    for (Map<String, String> line : lines) {
      if (line.get("status").equals("counted")) {
        measured++;
      } else if (line.get("status").equals("unresolved")) {
        unresolved++;
        assertThat(findings)
            .describedAs(line.toString())
            .anyMatch(
                f -> f.get("step").equals(line.get("step")) && f.get("code").matches("F\\d+"));
      }
    }
  }

  private static List<Path> models() throws IOException {
    try (Stream<Path> files = Files.walk(MODELS)) {
      return files.filter(file -> file.toString().matches(".*\\.(ifc|ifczip)")).sorted().toList();
    }
  }
}
