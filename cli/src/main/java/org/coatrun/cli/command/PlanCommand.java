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

/** Takeoff and line of a building in one run. */
final class PlanCommand extends Subcommand {

  private final ModelOptions models = new ModelOptions();

  private final JobOptions jobs = new JobOptions();

  private final ResultOptions results = new ResultOptions();

  private final StrictOption strict = new StrictOption();

  PlanCommand() {
    super(
        "plan",
        "Take off the building and plan its material line in one run.",
        "",
        "Writes all that takeoff and line write, all of it or nothing: the model is read and measured"
            + " once, and the findings and the basis of both stand in one list.",
        "");
    takes(models.args());
    takes(jobs.option());
    takes(results.option());
    takes(strict.option());
  }

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
