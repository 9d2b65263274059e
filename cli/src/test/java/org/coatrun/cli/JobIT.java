package org.coatrun.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.coatrun.cli.Program.Run;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.yaml.RecordStarter;
import org.coatrun.shared.yaml.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The packaged program prints a job file that it reads back as the defaults and the model's. */
class JobIT {

  private static final Path MODELS = Path.of(System.getProperty("coatrun.field.dir"), "models");

  @Test
  void printsAJobFileForTheDemonstrationBuilding() throws Exception {
    Run run = Program.run("job", Program.DEMO);

    assertThat(run.exitCode()).describedAs(run.err()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("# yaml-language-server: $schema=job.schema.json\n")
        .contains("\n#   \"Level 3\" at 8.50 m: ", "\n#   \"W12X26\", beam: ")
        .contains("\n#   - {section: \"W12X26\", hours: 2 h}\n")
        .contains("\n  name: \"Ferry Terminal Offices\" ");
    requireDefaults(Job.parse("job.yaml", run.out()), "Ferry Terminal Offices");
    requireReadyRules(run.out());
    assertThat(Program.run("job", Program.DEMO)).isEqualTo(run);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "office-4-storeys.2x3.ifc",
        "profiles-us-inch.ifc4.ifc",
        "housing-steelwork.ifczip",
        "newlines-in-strings.ifc",
        "encoding.ifc",
        "duplex.2x3.ifc"
      })
  void printsAJobFileForRealModels(String name) throws Exception {
    Path model = MODELS.resolve(name);
    assumeTrue(Files.exists(model), () -> "skipped: " + name + " is not beside the project");
    Run run = Program.run("job", model);

    assertThat(run.exitCode()).describedAs(run.err()).isZero();
    Job job = Job.parse("job.yaml", run.out());
    requireDefaults(job, job.project().name());
    requireReadyRules(run.out());
  }

  @Test
  void refusesWhatIsNoModel() throws Exception {
    Run run = Program.run("job", Program.ROOT.resolve("README.md"));

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).hasSize(1);
  }

  @Test
  void printsTheSchemaThatTheDistributionCarries() throws Exception {
    Run run = Program.run("job", "--schema");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).contains("\"title\" : \"Coatrun job file\"");
    assertThat(Program.DISTRIBUTION.resolve("schema/job.schema.json"))
        .usingCharset(UTF_8)
        .hasContent(run.out());
    assertThat(Program.DISTRIBUTION.resolve("schema/listing.schema.json")).exists();
  }

  /** But for name and units it is as if nothing were stated. */
  private static void requireDefaults(Job job, String name) {
    String stated =
        "project: {name: " + RecordStarter.text(name) + "}\nunits: " + Words.of(job.units());
    assertThat(job).isEqualTo(Job.parse("job.yaml", stated));
  }

  /** Rules behind a # are right once it is taken away. */
  private static void requireReadyRules(String starter) {
    List<String> ready = starter.lines().filter(line -> line.startsWith("#   - {")).toList();
    String taken =
        starter
            .lines()
            .map(
                line ->
                    line.startsWith("# ratings:") || line.startsWith("#   - {")
                        ? line.substring(2)
                        : line)
            .collect(Collectors.joining("\n"));
    if (!ready.isEmpty()) {
      assertThat(Job.parse("job.yaml", taken).ratings()).hasSameSizeAs(ready);
    }
  }
}
