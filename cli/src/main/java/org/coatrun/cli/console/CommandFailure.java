package org.coatrun.cli.console;

import java.util.Objects;
import java.util.concurrent.ExecutionException;

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

  /**
   * The failure of another thread as this thread's own; a fault of the program is thrown as it
   * came.
   */
  public static CommandFailure passedOn(ExecutionException other) {
    Throwable cause = other.getCause();
    if (cause instanceof CommandFailure failure) {
      return failure;
    }
    if (cause instanceof Error error) {
      throw error;
    }
    throw (RuntimeException) cause;
  }

  public ExitCode exitCode() {
    return exitCode;
  }
}
