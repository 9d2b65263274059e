package org.coatrun.cli.input;

import java.nio.file.Path;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.cli.console.ExitCode;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.yaml.JobFileException;

/** Job files. */
public final class JobFile {

  private JobFile() {}

  /**
   * Reads a job file.
   *
   * @throws CommandFailure with one sentence about the first thing wrong with it
   */
  public static Job read(Path file) throws CommandFailure {
    String text = InputText.read(file);
    try {
      return Job.parse(file.toString(), text);
    } catch (JobFileException e) {
      throw new CommandFailure(ExitCode.BAD_INPUT, e.getMessage());
    }
  }
}
