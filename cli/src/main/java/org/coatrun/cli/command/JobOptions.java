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

  private final OptionSpec job;

  /** For a bid. */
  JobOptions() {
    this(
        "JOB.yaml",
        "Job file: what ratings, listings, prices and limits to go by; 'coatrun job MODEL' prints one"
            + " to begin with. Without it hours and thickness stay open.");
  }

  /** For some of what a job file says. */
  JobOptions(String label, String description) {
    job =
        OptionSpec.builder("--job")
            .paramLabel(label)
            .type(Path.class)
            .description(description)
            .build();
  }

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
