package org.coatrun.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Runs the packaged program as a user would. */
final class Program {

  static final Path ROOT = Path.of(System.getProperty("coatrun.root"));
  static final Path DEMO = ROOT.resolve("test-models/harbour-office.ifc");
  static final Path DEMO_JOB = ROOT.resolve("test-models/harbour-office.job.yaml");
  static final Path FIRST_TRY = ROOT.resolve("test-models/first-try.ifc");
  static final Path DISTRIBUTION = Path.of(System.getProperty("coatrun.distribution"));

  private Program() {}

  /** How a run ended. */
  record Run(int exitCode, String out, String err) {}

  /** Runs the distribution's launcher. */
  static Run run(Object... arguments) throws IOException, InterruptedException {
    return run(Map.of(), arguments);
  }

  /** The same with other environment variables. */
  static Run run(Map<String, String> environment, Object... arguments)
      throws IOException, InterruptedException {
    boolean windows = System.getProperty("os.name").toLowerCase(Locale.ROOT).contains("windows");
    Path launcher = DISTRIBUTION.resolve(windows ? "bin/coatrun.cmd" : "bin/coatrun");
    return start(launcher, environment, arguments);
  }

  /** Runs any program. */
  static Run start(Path program, Map<String, String> environment, Object... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(program.toString()));
    for (Object argument : arguments) {
      command.add(argument.toString());
    }
    Path out = Files.createTempFile("coatrun", ".out");
    Path err = Files.createTempFile("coatrun", ".err");
    try {
      ProcessBuilder builder = new ProcessBuilder(command).directory(ROOT.toFile());
      builder.environment().keySet().removeIf(name -> name.startsWith("COATRUN_"));
      builder.environment().putAll(environment);
      int exitCode =
          builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start().waitFor();
      return new Run(exitCode, read(out), read(err));
    } finally {
      Files.delete(out);
      Files.delete(err);
    }
  }

  private static String read(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8);
  }
}
