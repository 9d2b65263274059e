package org.coatrun.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** Takeoffs with a page to look at; the demonstration building is taken off once for all. */
record DemoReport(Path page, JsonNode takeoff) {

  private static DemoReport demo;

  /** The demonstration building's. */
  static synchronized DemoReport demo() throws IOException, InterruptedException {
    if (demo == null) {
      demo = of(Program.DEMO, Files.createTempDirectory("coatrun-page"));
    }
    return demo;
  }

  /** Takes off a model into a folder. */
  static DemoReport of(Path model, Path folder) throws IOException, InterruptedException {
    Program.Run run = Program.run("takeoff", model, "--out", folder, "--units", "si");
    if (run.exitCode() != 0) {
      throw new IllegalStateException(run.err());
    }
    folder.toFile().deleteOnExit();
    try (Stream<Path> files = Files.list(folder)) {
      files.forEach(file -> file.toFile().deleteOnExit());
    }
    return new DemoReport(
        folder.resolve("report.html"),
        new JsonMapper().readTree(folder.resolve("takeoff.json").toFile()));
  }

  /** The first member with this mark. */
  JsonNode member(String mark) {
    return StreamSupport.stream(takeoff.path("members").spliterator(), false)
        .filter(m -> m.path("mark").asText().equals(mark))
        .findFirst()
        .orElseThrow();
  }
}
