package org.coatrun.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.input.JobFolder;
import org.coatrun.shared.bid.StatedSubstances;
import org.coatrun.shared.model.Building;
import picocli.CommandLine.Model.OptionSpec;

/** The job file of a command. */
final class JobOptions {

  private final OptionSpec job =
      OptionSpec.builder("--job")
          .paramLabel("JOB.yaml")
          .type(Path.class)
          .description(
              "Job file: what ratings, listings, prices and limits to go by; 'coatrun job MODEL'"
                  + " prints one to begin with. Without it hours and thickness stay open.")
          .build();

  OptionSpec option() {
    return job;
  }

  /**
   * Reads the job file and what it names, where one is given.
   *
   * @throws CommandFailure with one sentence about the first thing wrong
   */
  Optional<JobFolder> read() throws CommandFailure {
    Path file = job.getValue();
    return file == null ? Optional.empty() : Optional.of(JobFolder.read(file));
  }

  /** The building, its members taken for steel or not as the job says. */
  static Building applied(Optional<JobFolder> job, Building building) {
    return job.map(j -> StatedSubstances.in(building, j.job().substances())).orElse(building);
  }
}
