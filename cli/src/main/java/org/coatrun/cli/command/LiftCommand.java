package org.coatrun.cli.command;

import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.cli.console.Progress;
import org.coatrun.cli.line.LiftScreen;
import org.coatrun.cli.report.Cautions;

/** Shows, floor by floor, what vertical transfer asks for. */
final class LiftCommand extends Subcommand {

  private final ModelOptions models = new ModelOptions();

  private final JobOptions jobs = new JobOptions();

  LiftCommand() {
    super(
        "lift",
        "Check the vertical transfer to each floor: rise, hose, standpipe, water, power, air.",
        "",
        "Shows for each floor the rise and storeys, flexible hose and pipe, whether standpipe is"
            + " required and why, the pressure needed at the pump, booster, voltage drop, air for"
            + " ventilation, and bags against the room for them. Writes nothing.",
        "");
    takes(models.args());
    takes(jobs.option());
  }

  @Override
  ExitCode run() throws CommandFailure {
    models.begin(Progress.on(err()));
    LineRun run = LineRun.of(TakeoffRun.of(models, jobs.read(), false, err()), err());
    LiftScreen.print(out(), run.line(), run.takeoff().units());
    Cautions.print(out(), run.line().cautions());
    out().flush();
    return ModelOptions.completeness(run.takeoff().building(), err());
  }
}
