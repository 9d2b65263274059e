package org.coatrun.cli.command;

import java.io.PrintWriter;
import java.util.Optional;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.cli.console.Progress;
import org.coatrun.cli.line.LineFiles;
import org.coatrun.cli.line.LineScreen;
import org.coatrun.cli.output.OutputFolder;
import org.coatrun.cli.report.TakeoffScreen;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

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

  @Mixin private ResultOptions results;

  @Mixin private StrictOption strict;

  @Override
  ExitCode run() throws CommandFailure {
    models.begin(Progress.on(err()));
    var folder = jobs.read();
    try (OutputFolder to = results.open()) {
      LineRun run = LineRun.of(TakeoffRun.of(models, folder, true, err()), err());
      run.takeoff().write(to, Optional.of(run.line()));
      LineFiles.write(to, run.line(), run.takeoff().units());
      String screen = text(out -> print(out, run));
      to.publish();
      out().print(screen);
      results.say(out());
      return strict.after(run.takeoff(), err());
    }
  }

  private static void print(PrintWriter out, LineRun run) {
    LineScreen.print(out, run.line(), run.takeoff().units());
    out.println();
    TakeoffScreen.print(out, run.takeoff().results(), run.takeoff().units());
  }
}
