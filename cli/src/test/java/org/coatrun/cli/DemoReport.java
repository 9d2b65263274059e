package org.coatrun.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.coatrun.cli.browser.BrowserPage;

/** Takeoffs with a page to look at; the demonstration building is taken off once for all. */
record DemoReport(Path page, JsonNode takeoff) {

  private static DemoReport demo;
  private static DemoReport plan;

  /** The demonstration building's. */
  static synchronized DemoReport demo() throws IOException, InterruptedException {
    if (demo == null) {
      demo = of(Program.DEMO, Files.createTempDirectory("coatrun-page"));
    }
    return demo;
  }

  /** The demonstration building's with its job and its line; planned once for all. */
  static synchronized DemoReport plan() throws IOException, InterruptedException {
    if (plan == null) {
      Path folder = Files.createTempDirectory("coatrun-page");
      plan =
          of(Program.run("plan", Program.DEMO, "--job", Program.DEMO_JOB, "--out", folder), folder);
    }
    return plan;
  }

  /** Takes off a model into a folder. */
  static DemoReport of(Path model, Path folder) throws IOException, InterruptedException {
    return of(Program.run("takeoff", model, "--out", folder, "--units", "si"), folder);
  }

  private static DemoReport of(Program.Run run, Path folder) throws IOException {
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

  /** Holds that the page did not complain, and that it asked for nothing but itself. */
  void requireQuiet(BrowserPage shown) {
    assertThat(shown.complaints()).isEmpty();
    assertThat(shown.requests())
        .isNotEmpty()
        .allMatch(r -> r.startsWith(page.toUri().toString()) || isInThePage(r));
  }

  private static boolean isInThePage(String request) {
    return request.startsWith("data:") || request.startsWith("blob:");
  }

  /** The first member with this mark. */
  JsonNode member(String mark) {
    return StreamSupport.stream(takeoff.path("members").spliterator(), false)
        .filter(m -> m.path("mark").asText().equals(mark))
        .findFirst()
        .orElseThrow();
  }
}
