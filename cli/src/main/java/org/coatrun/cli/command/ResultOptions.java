package org.coatrun.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.output.OutputFolder;
import picocli.CommandLine.Model.OptionSpec;

/** Where a command puts its results. */
final class ResultOptions {

  private final OptionSpec out =
      OptionSpec.builder("--out")
          .required(true)
          .paramLabel("DIR")
          .type(Path.class)
          .description("Folder for the results; made where it does not exist.")
          .build();

  OptionSpec option() {
    return out;
  }

  /**
   * Opens the folder, before any long work.
   *
   * @throws CommandFailure where it cannot be made or written
   */
  OutputFolder open() throws CommandFailure {
    return OutputFolder.open(out.getValue());
  }

  /** Says on the screen where the results stand. */
  void say(PrintWriter screen) {
    screen.println("Written to " + out.<Path>getValue());
    screen.flush();
  }
}
