package org.coatrun.cli.damage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.coatrun.cli.command.CoatrunCommand;

/** Runs a command on what may be damaged, and holds what each run must keep to. */
final class Attempt {

  /** How much more than in each build; {@code -Dcoatrun.fuzz=100} does a hundred times as much. */
  static final int TIMES = Integer.getInteger("coatrun.fuzz", 1);

  /** The seed to begin with, so that longer runs can go on where others ended. */
  static final int FIRST = Integer.getInteger("coatrun.fuzz.first", 0);

  private static final int LONGEST_SENTENCE = 1000;
  private static final Duration MOST = Duration.ofMinutes(2);

  private Attempt() {}

  /**
   * Runs a command that writes: it writes all of its results or refuses with one sentence and
   * writes nothing, and no scratch folder is left.
   *
   * @param home where nothing else is written to
   * @return whether there is a result
   */
  static boolean run(String seed, Path home, Path out, Object... arguments) {
    boolean result = reading(seed, home, arguments);
    assertThat(!result || Files.isDirectory(out)).describedAs(seed).isTrue();
    return result;
  }

  /** The same for a command that shows its result on the screen. */
  static boolean reading(String seed, Path home, Object... arguments) {
    return assertTimeoutPreemptively(MOST, () -> checked(seed, home, arguments), seed);
  }

  private static boolean checked(String seed, Path home, Object... arguments) throws IOException {
    List<String> before = names(home);
    StringWriter screen = new StringWriter();
    StringWriter err = new StringWriter();
    String[] command = Stream.of(arguments).map(Object::toString).toArray(String[]::new);
    int exitCode =
        CoatrunCommand.commandLine(new PrintWriter(screen), new PrintWriter(err)).execute(command);

    String said = seed + ", exit code " + exitCode + ": " + err;
    assertThat(exitCode).describedAs(said).isIn(0, 3, 5);
    assertThat(err.toString()).describedAs(said).doesNotContain("Exception", "\tat ");
    if (exitCode == 3) {
      assertThat(screen.toString()).describedAs(said).isEmpty();
      assertThat(err.toString().lines()).describedAs(said).hasSize(1);
      assertThat(err.toString()).describedAs(said).startsWith("coatrun: ");
      assertThat(err.toString().length()).describedAs(said).isLessThan(LONGEST_SENTENCE);
      assertThat(names(home)).describedAs(said).isEqualTo(before);
      return false;
    }
    assertThat(names(home)).describedAs(said).noneMatch(name -> name.startsWith(".coatrun"));
    assertThat(screen.toString()).describedAs(said).isNotBlank();
    return true;
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
