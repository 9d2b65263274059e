package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;

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
 * The packaged program writes the same bytes on one processor, two and four, and where numbers are
 * written in other digits.
 */
class ThreadsIT {

  /** Hindi as it is written in India, with digits of its own. */
  private static final String HINDI =
      " -Duser.language=hi -Duser.country=IN -Duser.extensions=u-nu-deva";

  private static final Path JOB = Program.ROOT.resolve("test-models/harbour-office.job.yaml");

  @TempDir private Path home;

  @Test
  void neitherProcessorsNorLanguageChangeAByte() throws Exception {
    Path one = plan(1, "");
    assertThat(names(one)).contains("members.csv", "takeoff.xlsx", "report.html", "line.json");
    for (int processors : new int[] {2, 4}) {
      Path more = plan(processors, processors == 4 ? HINDI : "");
      assertThat(names(more)).isEqualTo(names(one));
      for (String name : names(one)) {
        assertThat(Files.mismatch(one.resolve(name), more.resolve(name)))
            .describedAs(name + " on " + processors)
            .isEqualTo(-1);
      }
    }
  }

  private Path plan(int processors, String language) throws Exception {
    Path out = home.resolve("on-" + processors);
    Map<String, String> environment =
        Map.of("COATRUN_OPTS", "-XX:ActiveProcessorCount=" + processors + language);
    Run run = Program.run(environment, "plan", Program.DEMO, "--job", JOB, "--out", out);
    assertThat(run.exitCode()).describedAs(run.err()).isZero();
    return out;
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
