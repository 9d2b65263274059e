package org.coatrun.cli.command;

import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.cli.console.Progress;
import org.coatrun.cli.report.SurveyScreen;
import org.coatrun.shared.model.Building;

/** Shows what a model holds and what it lacks for this job. */
final class SurveyCommand extends Subcommand {

  private final ModelOptions models = new ModelOptions();

  SurveyCommand() {
    super(
        "survey",
        "Show what a model holds and what it lacks for this job.",
        "",
        "Schema, units, storeys, steel by section, deck, what the model lacks, and what is wrong"
            + " with it. Writes nothing.",
        "");
    takes(models.args());
  }

  @Override
  ExitCode run() throws CommandFailure {
    Building building = models.read(Progress.on(err()));
    SurveyScreen.print(out(), building, models.units(building));
    out().flush();
    return ModelOptions.completeness(building, err());
  }
}
