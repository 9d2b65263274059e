package org.coatrun.cli.command;

import java.io.PrintWriter;
import org.coatrun.cli.console.ExitCode;
import picocli.CommandLine.Option;

/** Whether an unresolved element shows in the exit code. */
final class StrictOption {

  @Option(names = "--strict", description = "Exit with 5 where an element is unresolved.")
  private boolean strict;

  /** The exit code of a takeoff, said on {@code err} where a model was cut off. */
  ExitCode after(TakeoffRun run, PrintWriter err) {
    ExitCode completeness = ModelOptions.completeness(run.building(), err);
    return strict && run.unresolved() > 0 ? ExitCode.PARTIAL : completeness;
  }
}
