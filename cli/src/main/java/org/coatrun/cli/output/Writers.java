package org.coatrun.cli.output;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.coatrun.cli.console.Awaited;
import org.coatrun.cli.console.CommandFailure;

/**
 * Threads that write files side by side: one more than there are processors, so that the longest
 * files are begun at once and end together, rather than one of them alone at the end.
 */
final class Writers {

  /**
   * A thread in the midst of a sum does not hear that it should stop; its file goes all the same.
   */
  private static final int PATIENCE_S = 1;

  private final ExecutorService pool =
      Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors() + 1);
  private final List<Future<Void>> asked = new ArrayList<>();

  /** Has a file written. */
  void ask(Callable<Void> file) {
    asked.add(pool.submit(file));
  }

  /**
   * Waits until all files are written.
   *
   * @throws CommandFailure where one could not be: the first of them in the order of asking
   */
  void await() throws CommandFailure {
    for (Future<Void> file : asked) {
      Awaited.result(file, "writing");
    }
  }

  /** Ends what is being written, half-done. */
  void stop() {
    pool.shutdownNow();
    try {
      pool.awaitTermination(PATIENCE_S, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
