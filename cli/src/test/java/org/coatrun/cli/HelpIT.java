package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.coatrun.cli.Program.Run;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The packaged program says what it is, and what it did not understand. */
class HelpIT {

  private static final String EXIT_CODES =
      """

      Exit codes:
        0   Done.
        1   The program itself failed, or was ended early. Nothing was written.
        2   The command line was not understood. Nothing was read or written.
        3   An input file is missing, cannot be used, or is cut off. Nothing was written.
        4   The results could not be written. What stood there before still stands.
        5   Done, but not in full: a cut-off model was accepted with --accept-truncated, or --strict
              was given and an element is unresolved.
        6   The memory given was not enough. Nothing was written.
      """;

  @Test
  void takeoffExplainsItself() throws Exception {
    assertThat(Program.run("takeoff", "--help"))
        .isEqualTo(
            new Run(
                0,
                """
                Account for every steel element and deck: surfaces, weight, section factor.
                Usage: coatrun takeoff [-h] [--accept-truncated] [--strict] [--job=JOB.yaml] --out=DIR
                                       [--units=us|si] MODEL...

                Writes members.csv, decks.csv, findings.csv, takeoff.json, the workbook takeoff.xlsx, basis.txt
                and the page report.html, all of them or none, and shows the steel by storey and section.
                With --job also the hours and thickness of each element with what decided them, and the files
                material.csv, programme.csv and inspection.csv (the field sheet).

                      MODEL...             IFC files (.ifc, .ifczip) of one building: structure, architecture
                                             and others together count as one.
                      --accept-truncated   Use a cut-off file as far as it goes, and exit with 5.
                  -h, --help               Show this help and exit.
                      --job=JOB.yaml       Job file: what ratings, listings, prices and limits to go by;
                                             'coatrun job MODEL' prints one to begin with. Without it hours and
                                             thickness stay open.
                      --out=DIR            Folder for the results; made where it does not exist.
                      --strict             Exit with 5 where an element is unresolved.
                      --units=us|si        Units on the screen; as the first model's, if not given. Files are
                                             always in SI.
                """
                    + EXIT_CODES,
                ""));
  }

  @Test
  void surveyExplainsItself() throws Exception {
    Run run = Program.run("survey", "--help");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .startsWith(
            """
            Show what a model holds and what it lacks for this job.
            Usage: coatrun survey [-h] [--accept-truncated] [--units=us|si] MODEL...
            """)
        .endsWith(EXIT_CODES);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "plan | Take off the building and plan its material line in one run.",
        "line | Plan the material line: machine, standpipe, hose, set-ups, hardware, moves.",
        "lift | Check the vertical transfer to each floor: rise, hose, standpipe, water, power, air."
      })
  void theCommandsOfTheLineExplainThemselves(String command, String header) throws Exception {
    Run run = Program.run(command, "--help");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .startsWith(header + "\nUsage: coatrun " + command + " [-h]")
        .contains("--job=JOB.yaml", "MODEL...")
        .endsWith(EXIT_CODES);
  }

  @Test
  void jobExplainsItself() throws Exception {
    Run run = Program.run("job", "--help");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .startsWith(
            """
            Print a job file to begin with: every key, its default, what it means.
            Usage: coatrun job [-h] [--accept-truncated] [--schema] [--units=us|si] MODEL...
            """)
        .contains("\n  coatrun job model.ifc > job.yaml\n")
        .endsWith(EXIT_CODES);
  }

  @Test
  void pailExplainsItself() throws Exception {
    Run run = Program.run("pail", "--help");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .startsWith(
            """
            Pail check: from water in a pail to its flow and the bags an hour it supports.
            Usage: coatrun pail [-h] [--bag=WEIGHT] --depth=LENGTH --diameter=LENGTH [--job=JOB.yaml]
                                [--ratio=NUMBER] --seconds=NUMBER
            """)
        .endsWith(EXIT_CODES);
  }

  @Test
  void readingsExplainsItself() throws Exception {
    Run run = Program.run("readings", "--help");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .startsWith(
            """
            Judge thickness readings by the averaging rule and by the 10 % rule, each apart.
            Usage: coatrun readings [-h] [--job=JOB] [--out=DIR] [--units=us|si] FILE
            """)
        .endsWith(EXIT_CODES);
  }

  @Test
  void theProgramNamesItsCommandsAndItsVersion() throws Exception {
    Run help = Program.run("--help");

    assertThat(help.exitCode()).isZero();
    assertThat(help.err()).isEmpty();
    assertThat(help.out())
        .contains("\nCommands:\n")
        .contains("\n  survey ", "\n  job ", "\n  takeoff ", "\n  pail ", "\n  readings ")
        .contains("\n  plan ", "\n  line ", "\n  lift ");
    assertThat(Program.run("--version"))
        .isEqualTo(new Run(0, "coatrun " + System.getProperty("coatrun.version") + "\n", ""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''                                | no command given                          | coatrun",
        "hoist                             | Unmatched argument at index 0: 'hoist'    | coatrun",
        "line model.ifc                    | Missing required option: '--out=DIR'      | coatrun line",
        "plan model.ifc                    | Missing required option: '--out=DIR'      | coatrun plan",
        "lift                              | Missing required parameter: 'MODEL'       | coatrun lift",
        "takeoff model.ifc                 | Missing required option: '--out=DIR'      | coatrun takeoff",
        "survey                            | Missing required parameter: 'MODEL'       | coatrun survey",
        "survey model.ifc --units cubits   | Invalid value for option '--units'        | coatrun survey",
        "survey model.ifc --depth 3        | Unknown option: '--depth'                 | coatrun survey"
      })
  void aMistakeInTheCommandLineIsOneSentence(String line, String sentence, String command)
      throws Exception {
    Run run = Program.run(line.isEmpty() ? new Object[0] : (Object[]) line.split(" +", -1));

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .startsWith("coatrun: " + sentence)
        .endsWith("coatrun: try '" + command + " --help'\n")
        .doesNotContain("Exception", "\tat ");
  }

  @Test
  void theJvmGetsItsOptions() throws Exception {
    Run run = Program.run(Map.of("COATRUN_OPTS", "-Xmx64m -XshowSettings:vm"), "--version");

    assertThat(run.err()).contains("Max. Heap Size: 64.00M");
  }

  @Test
  void aMissingJavaIsOneSentence() throws Exception {
    Run run = Program.run(Map.of("PATH", bareTools().toString(), "JAVA_HOME", ""), "--version");

    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.err()).startsWith("coatrun: no Java found. Install a Java runtime");
  }

  @Test
  void theDistributionNamesEachLibraryAndItsLicence() throws Exception {
    String named = Files.readString(Program.DISTRIBUTION.resolve("THIRD-PARTY.txt"));
    try (var archives = Files.list(Program.DISTRIBUTION.resolve("lib"))) {
      List<String> libraries =
          archives
              .map(file -> file.getFileName().toString())
              .filter(name -> !name.startsWith("coatrun-"))
              .map(name -> name.replaceFirst("-[0-9].*", "").toLowerCase(Locale.ROOT))
              .toList();
      assertThat(libraries).isNotEmpty().allMatch(name -> named.contains("\n" + name + " "));
    }
    assertThat(Program.DISTRIBUTION).isDirectoryContaining("glob:**/{LICENSE,NOTICE,README.md}");
    assertThat(Program.DISTRIBUTION.resolve("bin/coatrun.cmd")).content().contains("\r\n");
  }

  // The tools that the launcher itself needs, without Java.
  private static Path bareTools() throws Exception {
    Path folder = Files.createTempDirectory("tools");
    for (String tool : List.of("sh", "dirname", "readlink", "env")) {
      Files.createSymbolicLink(folder.resolve(tool), Path.of("/usr/bin", tool));
    }
    return folder;
  }
}
