package org.coatrun.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.cli.line.LineFiles;
import org.coatrun.cli.line.LineScreen;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.cli.report.TakeoffScreen;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Takeoff and line of a building in one run. */
@Command(
    name = "plan",
    header = "Take off the building and plan its material line in one run.",
    description = {
      "",
      "Writes all that takeoff and line write, all of it or nothing: the model is read and measured"
          + " once, and the findings and the basis of both stand in one list.",
      ""
    })
final class PlanCommand extends Subcommand {

  @Mixin private ModelOptions models;

  @Mixin private JobOptions jobs;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "Folder for the results; made where it does not exist.")
  private Path out;

  @Option(names = "--strict", description = "Exit with 5 where an element is unresolved.")
  private boolean strict;

  @Override
  ExitCode run() throws CommandFailure {
    var folder = jobs.read();
    try (OutputFolder to = OutputFolder.open(out)) {
      LineRun run = LineRun.of(TakeoffRun.of(models, folder, true, err()), err());
      run.takeoff().write(to, Optional.of(run.line()), err());
      LineFiles.write(to, run.line(), run.takeoff().units());
      to.publish();
      LineScreen.print(out(), run.line(), run.takeoff().units());
      out().println();
      TakeoffScreen.print(out(), run.takeoff().results(), run.takeoff().units());
      out().println("Written to " + out);
      out().flush();
      ExitCode completeness = ModelOptions.completeness(run.takeoff().building(), err());
      return strict && run.takeoff().unresolved() > 0 ? ExitCode.PARTIAL : completeness;
    }
  }
}
