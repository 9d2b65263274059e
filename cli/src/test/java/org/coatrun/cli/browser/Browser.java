package org.coatrun.cli.browser;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A browser without a window, with a fresh profile and no name that it could resolve. */
public final class Browser implements AutoCloseable {

  private static final List<String> NAMES =
      List.of("chromium", "chromium-browser", "google-chrome-stable");
  private static final String READY = "DevTools listening on ";
  private static final List<String> FLAGS =
      List.of(
          "--headless=new",
          "--no-sandbox",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync",
          "--disable-dev-shm-usage",
          "--use-gl=angle",
          "--use-angle=swiftshader",
          "--enable-unsafe-swiftshader",
          "--hide-scrollbars",
          "--force-device-scale-factor=1",
          "--host-resolver-rules=MAP * ~NOTFOUND",
          "--remote-debugging-port=0");

  private final Process process;
  private final Path profile;
  private final DevTools tools;

  private Browser(Process process, Path profile, DevTools tools) {
    this.process = process;
    this.profile = profile;
    this.tools = tools;
  }

  /** The program on this machine, where there is one. */
  public static Optional<Path> installed() {
    return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
        .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** Starts it and waits until it listens. */
  public static Browser start(Path program) throws IOException {
    Path profile = Files.createTempDirectory("coatrun-browser");
    List<String> command = new ArrayList<>(List.of(program.toString()));
    command.addAll(FLAGS);
    command.add("--user-data-dir=" + profile);
    command.add("about:blank");
    Process process =
        new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
    Runtime.getRuntime().addShutdownHook(new Thread(() -> end(process), "browser's end"));
    return new Browser(process, profile, new DevTools(address(process)));
  }

  private static URI address(Process process) throws IOException {
    BufferedReader said = process.errorReader(StandardCharsets.UTF_8);
    StringBuilder before = new StringBuilder();
    for (String line = said.readLine(); line != null; line = said.readLine()) {
      if (line.startsWith(READY)) {
        drain(said);
        return URI.create(line.substring(READY.length()));
      }
      before.append(line).append('\n');
    }
    throw new IOException("the browser ended before it listened: " + before);
  }

  private static void end(Process process) {
    process.descendants().forEach(ProcessHandle::destroyForcibly);
    process.destroyForcibly();
  }

  private static void drain(BufferedReader said) {
    Thread reader = new Thread(() -> said.lines().forEach(line -> {}), "browser's words");
    reader.setDaemon(true);
    reader.start();
  }

  /** A new page of this size. */
  public BrowserPage page(int width, int height) {
    String target =
        tools
            .call("", "Target.createTarget", Map.of("url", "about:blank", "newWindow", true))
            .path("targetId")
            .asText();
    String session =
        tools
            .call("", "Target.attachToTarget", Map.of("targetId", target, "flatten", true))
            .path("sessionId")
            .asText();
    return new BrowserPage(tools, target, session, width, height);
  }

  @Override
  public void close() throws IOException {
    tools.call("", "Browser.close", Map.of());
    process.onExit().completeOnTimeout(process, 20, TimeUnit.SECONDS).join();
    if (process.isAlive()) {
      end(process);
    }
    try (Stream<Path> files = Files.walk(profile)) {
      files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
    }
  }
}
