package org.coatrun.cli.command;

import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.cli.console.Progress;
import org.coatrun.cli.starter.JobSchema;
import org.coatrun.cli.starter.JobStarter;
import org.coatrun.shared.model.Building;
import picocli.CommandLine.Model.OptionSpec;

/** Prints a job file to begin with. */
final class JobCommand extends Subcommand {

  private final ModelOptions models = new ModelOptions();

  private final OptionSpec schema =
      OptionSpec.builder("--schema")
          .type(boolean.class)
          .initialValue(false)
          .help(true)
          .description("Print the JSON Schema of job files, for editors, and read no model.")
          .build();

  JobCommand() {
    super(
        "job",
        "Print a job file to begin with: every key, its default, what it means.",
        "",
        "Storeys, sections, decks and spaces of the model stand in it as comments, and rules for them"
            + " ready to be taken up:",
        "",
        "  coatrun job model.ifc > job.yaml",
        "");
    takes(models.args());
    takes(schema);
  }

  @Override
  ExitCode run() throws CommandFailure {
    if (schema.<Boolean>getValue()) {
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
