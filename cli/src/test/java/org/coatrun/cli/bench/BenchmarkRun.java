package org.coatrun.cli.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.coatrun.testmodels.scenario.TowerSize;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * Times the packaged program on towers of growing size, each run a process of its own, and prints
 * tables; DEVELOPERS.md says how. No test: only the profile {@code benchmark} runs it.
 */
class BenchmarkRun {

  private static final String SURVEY = "survey";
  private static final String TAKEOFF = "takeoff";
  private static final String LINE = "line";
  private static final String OPEN = "web-ifc open";
  private static final String MESH = "web-ifc open and mesh";

  private static final Path ROOT = Path.of(System.getProperty("coatrun.root"));
  private static final Path LAUNCHER =
      Path.of(System.getProperty("coatrun.distribution"), "bin", "coatrun");
  private static final String PEER = setting("peer", "");
  private static final int ROUNDS = Integer.parseInt(setting("rounds", "2"));
  private static final Duration LIMIT = Duration.ofMinutes(30);

  private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);

  @Test
  void printsItsTables() throws IOException, InterruptedException, RunnerException {
    Path folder = Files.createTempDirectory("bench");
    try {
      out.println(Machine.words() + "; best of " + ROUNDS + ", start included");
      out.println();
      out.println(reading(folder).text());
      out.println(siting(folder).text());
      out.println(parts(folder).text());
    } finally {
      try (Stream<Path> files = Files.walk(folder)) {
        files.sorted((a, b) -> b.compareTo(a)).forEach(file -> file.toFile().delete());
      }
    }
  }

  private static BenchTable reading(Path folder) throws IOException, InterruptedException {
    boolean beside = !PEER.isEmpty();
    var table =
        new BenchTable(
            beside ? List.of(SURVEY, TAKEOFF, OPEN, MESH) : List.of(SURVEY, TAKEOFF),
            Map.of(SURVEY, OPEN, TAKEOFF, MESH));
    for (double megabytes : numbers("megabytes", "8,16,32,64")) {
      BenchModel model = BenchModel.write(folder, "reading", TowerSize.ofMegabytes(megabytes));
      String file = model.file().toString();
      var commands = new LinkedHashMap<String, List<String>>();
      commands.put(SURVEY, List.of(LAUNCHER.toString(), SURVEY, file));
      commands.put(TAKEOFF, withResults(TAKEOFF, file, folder));
      if (beside) {
        commands.put(OPEN, peer(file, "open"));
        commands.put(MESH, peer(file, "mesh"));
      }
      table.add(row(String.format("tower of %.0f MB", model.megabytes()), model, commands));
    }
    return table;
  }

  private static BenchTable siting(Path folder) throws IOException, InterruptedException {
    var table = new BenchTable(List.of(LINE, TAKEOFF), Map.of());
    for (double storeys : numbers("storeys", "4,8,16,32")) {
      BenchModel model = BenchModel.write(folder, "siting", TowerSize.plain((int) storeys));
      String file = model.file().toString();
      var commands = new LinkedHashMap<String, List<String>>();
      commands.put(LINE, withResults(LINE, file, folder));
      commands.put(TAKEOFF, withResults(TAKEOFF, file, folder));
      table.add(row(String.format("%.0f storeys", storeys), model, commands));
    }
    return table;
  }

  /** The steps, each alone. */
  private static BenchTable parts(Path folder) throws IOException, RunnerException {
    var options =
        new OptionsBuilder().include(Parts.class.getName()).verbosity(VerboseMode.SILENT).build();
    var bySize = new TreeMap<Integer, Map<String, Timed>>();
    for (RunResult result : new Runner(options).run()) {
      int storeys = Integer.parseInt(result.getParams().getParam("storeys"));
      var part = result.getPrimaryResult();
      bySize
          .computeIfAbsent(storeys, n -> new TreeMap<>())
          .put(part.getLabel(), new Timed(part.getScore(), OptionalDouble.empty()));
    }
    var table = new BenchTable(List.of("reading", "surfaces", "siting", "report"), Map.of());
    for (var size : bySize.entrySet()) {
      BenchModel model = BenchModel.write(folder, "part", TowerSize.plain(size.getKey()));
      table.add(new BenchTable.Row(size.getKey() + " storeys", model.elements(), size.getValue()));
    }
    return table;
  }

  private static BenchTable.Row row(
      String name, BenchModel model, Map<String, List<String>> commands)
      throws IOException, InterruptedException {
    return new BenchTable.Row(name, model.elements(), new Contest(commands, ROUNDS, LIMIT).run());
  }

  private static List<String> withResults(String command, String file, Path folder) {
    return List.of(LAUNCHER.toString(), command, file, "--out", folder.resolve(command).toString());
  }

  private static List<String> peer(String file, String work) {
    String script = ROOT.resolve("test-models/peer/time.mjs").toString();
    return List.of("node", script, PEER, file, work);
  }

  private static double[] numbers(String name, String otherwise) {
    return Stream.of(setting(name, otherwise).split(","))
        .mapToDouble(Double::parseDouble)
        .toArray();
  }

  private static String setting(String name, String otherwise) {
    String given = System.getProperty("coatrun.bench." + name, "");
    return given.isBlank() ? otherwise : given;
  }
}
