package org.coatrun.cli.console;

import java.util.Objects;

/** Ends a command with one sentence for the user and an exit code. */
public final class CommandFailure extends Exception {

  private static final long serialVersionUID = 1;

  private final ExitCode exitCode;

  /**
   * A failure to report.
   *
   * @param sentence what went wrong, where, and what to do
   */
  public CommandFailure(ExitCode exitCode, String sentence) {
    super(sentence);
    this.exitCode = Objects.requireNonNull(exitCode);
  }

  public ExitCode exitCode() {
    return exitCode;
  }
}
