package org.coatrun.cli.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * One run of a program, from its start to its end by the clock.
 *
 * @param peak most memory that it held, in MiB, where the system tells
 */
record Timed(double seconds, OptionalDouble peak) {

  private static final long GLANCE_MILLIS = 20;

  /**
   * Runs a program.
   *
   * @throws IOException where it cannot be started, fails or takes longer than the limit
   */
  static Timed run(List<String> command, Duration limit) throws IOException, InterruptedException {
    File log = File.createTempFile("bench", ".log");
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log).start();
    OptionalDouble peak = OptionalDouble.empty();
    while (!process.waitFor(GLANCE_MILLIS, TimeUnit.MILLISECONDS)) {
      OptionalDouble now = peak(process.pid());
      peak = now.isPresent() ? now : peak;
      if (System.nanoTime() - start > limit.toNanos()) {
        process.destroyForcibly();
        throw new IOException(command + " took longer than " + limit.toSeconds() + " s");
      }
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    if (process.exitValue() != 0) {
      throw new IOException(command + " failed, see " + log);
    }
    Files.delete(log.toPath());
    return new Timed(seconds, peak);
  }

  /** The quicker of two runs, with the larger of their peaks. */
  Timed better(Timed other) {
    double most = Math.max(peak.orElse(0), other.peak.orElse(0));
    return new Timed(
        Math.min(seconds, other.seconds),
        most > 0 ? OptionalDouble.of(most) : OptionalDouble.empty());
  }

  /** The kernel's high-water mark; on systems that have no such file there is none. */
  private static OptionalDouble peak(long pid) {
    Path status = Path.of("/proc", Long.toString(pid), "status");
    try (Stream<String> lines = Files.exists(status) ? Files.lines(status) : Stream.empty()) {
      return lines
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1024)
          .findFirst();
    } catch (IOException | java.io.UncheckedIOException e) {
      return OptionalDouble.empty();
    }
  }
}
