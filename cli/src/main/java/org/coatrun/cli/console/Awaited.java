package org.coatrun.cli.console;

import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;

/** What another thread does for the command. */
public final class Awaited {

  private Awaited() {}

  /**
   * Waits for what comes of it. A fault of the program over there is thrown as it came.
   *
   * @param doing what is going on, for the case that the wait is interrupted: {@code writing}
   * @throws CommandFailure where the other thread ended the command
   */
  public static <T> T result(Future<T> work, String doing) throws CommandFailure {
    try {
      return work.get();
    } catch (ExecutionException e) {
      throw failure(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException(doing + " was interrupted");
    }
  }

  private static CommandFailure failure(Throwable cause) {
    if (cause instanceof CommandFailure failure) {
      return failure;
    }
    if (cause instanceof Error error) {
      throw error;
    }
    throw (RuntimeException) cause;
  }
}
