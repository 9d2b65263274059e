package org.coatrun.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.output.OutputFolder;
import picocli.CommandLine.Option;

/** Where a command puts its results. */
final class ResultOptions {

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "Folder for the results; made where it does not exist.")
  private Path out;

  /**
   * Opens the folder, before any long work.
   *
   * @throws CommandFailure where it cannot be made or written
   */
  OutputFolder open() throws CommandFailure {
    return OutputFolder.open(out);
  }

  /** Says on the screen where the results stand. */
  void say(PrintWriter screen) {
    screen.println("Written to " + out);
    screen.flush();
  }
}
