package org.coatrun.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.input.JobFolder;
import org.coatrun.shared.bid.StatedSubstances;
import org.coatrun.shared.model.Building;
import picocli.CommandLine.Option;

/** The job file of a command. */
final class JobOptions {

  @Option(
      names = "--job",
      paramLabel = "JOB.yaml",
      description = {
        "Job file: what ratings, listings, prices and limits to go by; 'coatrun job MODEL' prints one"
            + " to begin with. Without it hours and thickness stay open."
      })
  private Optional<Path> job = Optional.empty();

  /**
   * Reads the job file and what it names, where one is given.
   *
   * @throws CommandFailure with one sentence about the first thing wrong
   */
  Optional<JobFolder> read() throws CommandFailure {
    return job.isPresent() ? Optional.of(JobFolder.read(job.get())) : Optional.empty();
  }

  /** The building, its members taken for steel or not as the job says. */
  static Building applied(Optional<JobFolder> job, Building building) {
    return job.map(j -> StatedSubstances.in(building, j.job().substances())).orElse(building);
  }
}
