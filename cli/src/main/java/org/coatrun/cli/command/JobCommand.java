package org.coatrun.cli.command;

import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.cli.console.Progress;
import org.coatrun.cli.starter.JobSchema;
import org.coatrun.cli.starter.JobStarter;
import org.coatrun.shared.model.Building;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints a job file to begin with. */
@Command(
    name = "job",
    header = "Print a job file to begin with: every key, its default, what it means.",
    description = {
      "",
      "Storeys, sections, decks and spaces of the model stand in it as comments, and rules for them"
          + " ready to be taken up:",
      "",
      "  coatrun job model.ifc > job.yaml",
      ""
    })
final class JobCommand extends Subcommand {

  @Mixin private ModelOptions models;

  @Option(
      names = "--schema",
      help = true,
      description = "Print the JSON Schema of job files, for editors, and read no model.")
  private boolean schema;

  @Override
  ExitCode run() throws CommandFailure {
    if (schema) {
      out().print(JobSchema.text());
      return ExitCode.OK;
    }
    Building building = models.read(Progress.on(err()));
    // Written in one go and with bare line ends: the file is the same on every machine.
    out().print(String.join("\n", JobStarter.lines(building, models.units(building))) + "\n");
    out().flush();
    return ModelOptions.completeness(building, err());
  }
}
