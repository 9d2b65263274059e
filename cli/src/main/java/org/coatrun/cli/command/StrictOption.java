package org.coatrun.cli.command;

import java.io.PrintWriter;
import org.coatrun.cli.console.ExitCode;
import picocli.CommandLine.Model.OptionSpec;

/** Whether an unresolved element shows in the exit code. */
final class StrictOption {

  private final OptionSpec strict =
      OptionSpec.builder("--strict")
          .type(boolean.class)
          .initialValue(false)
          .description("Exit with 5 where an element is unresolved.")
          .build();

  OptionSpec option() {
    return strict;
  }

  /** The exit code of a takeoff, said on {@code err} where a model was cut off. */
  ExitCode after(TakeoffRun run, PrintWriter err) {
    ExitCode completeness = ModelOptions.completeness(run.building(), err);
    return strict.<Boolean>getValue() && run.unresolved() > 0 ? ExitCode.PARTIAL : completeness;
  }
}
