package org.coatrun.cli.command;

import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.cli.console.Progress;
import org.coatrun.cli.report.SurveyScreen;
import org.coatrun.shared.model.Building;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Shows what a model holds and what it lacks for this job. */
@Command(
    name = "survey",
    header = "Show what a model holds and what it lacks for this job.",
    description = {
      "",
      "Schema, units, storeys, steel by section, deck, what the model lacks, and what is wrong"
          + " with it. Writes nothing.",
      ""
    })
final class SurveyCommand extends Subcommand {

  @Mixin private ModelOptions models;

  @Override
  ExitCode run() throws CommandFailure {
    Building building = models.read(Progress.on(err()));
    SurveyScreen.print(out(), building, models.units(building));
    out().flush();
    return ModelOptions.completeness(building, err());
  }
}
