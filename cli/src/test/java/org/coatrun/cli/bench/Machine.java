package org.coatrun.cli.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a machine is, in a line. */
final class Machine {

  private Machine() {}

  static String words() {
    return String.format(
        Locale.ROOT,
        "%s %s, %d processors%s%s, Java %s",
        System.getProperty("os.name"),
        System.getProperty("os.arch"),
        Runtime.getRuntime().availableProcessors(),
        told("/proc/cpuinfo", "model name").map(name -> " (" + name + ")").orElse(""),
        told("/proc/meminfo", "MemTotal").map(kb -> ", " + gibibytes(kb)).orElse(""),
        System.getProperty("java.version"));
  }

  private static String gibibytes(String kilobytes) {
    double kb = Double.parseDouble(kilobytes.replaceAll("\\D", ""));
    return String.format(Locale.ROOT, "%.0f GiB", kb / (1 << 20));
  }

  private static Optional<String> told(String file, String key) {
    Path path = Path.of(file);
    try (Stream<String> lines = Files.exists(path) ? Files.lines(path) : Stream.empty()) {
      return lines
          .filter(line -> line.startsWith(key))
          .map(line -> line.substring(line.indexOf(':') + 1).trim())
          .findFirst();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
