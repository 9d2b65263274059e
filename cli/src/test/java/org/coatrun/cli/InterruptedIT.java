package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A run that is interrupted while it works leaves what was there before and nothing else; one that
 * is interrupted while files move into place leaves all of them.
 */
class InterruptedIT {

  private static final Path LAUNCHER = Program.DISTRIBUTION.resolve("bin/coatrun");
  private static final String OLD = "from the run before";
  private static final int TRIES = 10;

  @TempDir private Path home;

  @BeforeAll
  static void needsSignals() {
    assumeTrue(Files.isExecutable(Path.of("/bin/kill")), "skipped: no signals on this system");
  }

  /**
   * As soon as the scratch folder is there, and as soon as there is a first and a late file. Where
   * the program was quicker than the signal and had begun to move its files, all of them are there,
   * and it is tried again.
   */
  @ParameterizedTest
  @ValueSource(strings = {".coatrun-", "members.csv", "takeoff.json", "takeoff.xlsx"})
  void leavesWhatWasThere(String sign) throws Exception {
    List<String> whole = whole();
    List<String> left = whole;
    for (int n = 0; n < TRIES && left.equals(whole); n++) {
      Path out = Files.createDirectory(home.resolve("out" + n));
      Path kept = Files.writeString(out.resolve("members.csv"), OLD);
      Process process = start(out, sign);

      int exitCode = process.waitFor();
      left = names(out);
      if (!left.equals(whole)) {
        assertThat(exitCode).isNotZero();
        assertThat(kept).content().isEqualTo(OLD);
      }
    }
    assertThat(left).containsExactly("members.csv");
  }

  @Test
  void leavesAllWhereFilesAreMoving() throws Exception {
    List<String> whole = whole();
    Path out = Files.createDirectory(home.resolve("out"));
    try (WatchService watch = out.getFileSystem().newWatchService()) {
      out.register(watch, StandardWatchEventKinds.ENTRY_CREATE);
      Process process = process(out);
      await(watch, "members.csv", out);
      interrupt(process);
      process.waitFor();
    }
    assertThat(names(out)).isEqualTo(whole);
  }

  /** What a run that nobody interrupts leaves. */
  private List<String> whole() throws Exception {
    Path folder = home.resolve("whole");
    assertThat(Program.run("takeoff", Program.FIRST_TRY, "--out", folder).exitCode()).isZero();
    return names(folder);
  }

  /**
   * Starts a takeoff and interrupts it when a name shows up in the folder or its scratch folder.
   */
  private Process start(Path out, String sign) throws IOException, InterruptedException {
    try (WatchService watch = out.getFileSystem().newWatchService()) {
      out.register(watch, StandardWatchEventKinds.ENTRY_CREATE);
      Process process = process(out);
      Path scratch = await(watch, ".coatrun-", out);
      if (!sign.equals(".coatrun-")) {
        scratch.register(watch, StandardWatchEventKinds.ENTRY_CREATE);
        if (!Files.exists(scratch.resolve(sign))) {
          await(watch, sign, scratch);
        }
      }
      interrupt(process);
      return process;
    }
  }

  private static Path await(WatchService watch, String sign, Path in) throws InterruptedException {
    for (WatchKey key = next(watch); true; key = next(watch)) {
      for (WatchEvent<?> event : key.pollEvents()) {
        if (event.context() != null && event.context().toString().startsWith(sign)) {
          return in.resolve(event.context().toString());
        }
      }
      key.reset();
    }
  }

  private static WatchKey next(WatchService watch) throws InterruptedException {
    WatchKey key = watch.poll(2, TimeUnit.MINUTES);
    assertThat(key).describedAs("the program writes").isNotNull();
    return key;
  }

  private Process process(Path out) throws IOException {
    return new ProcessBuilder(
            LAUNCHER.toString(), "takeoff", Program.FIRST_TRY.toString(), "--out", out.toString())
        .redirectErrorStream(true)
        .redirectOutput(home.resolve("said").toFile())
        .start();
  }

  /** As ctrl-C does; where this process was started to ignore that, as an end of the session. */
  private static void interrupt(Process process) throws IOException, InterruptedException {
    String signal = ignoresInterrupts() ? "-TERM" : "-INT";
    new ProcessBuilder("/bin/kill", signal, Long.toString(process.pid())).start().waitFor();
  }

  private static boolean ignoresInterrupts() throws IOException {
    Path status = Path.of("/proc/self/status");
    if (!Files.exists(status)) {
      return false;
    }
    return Files.readAllLines(status).stream()
        .filter(line -> line.startsWith("SigIgn:"))
        .anyMatch(line -> (Long.parseUnsignedLong(line.substring(7).strip(), 16) & 2) != 0);
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
