package org.coatrun.geometry.surface;

import java.util.ArrayList;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Tolerance;

/** Threads that work side by side. */
final class Crew implements AutoCloseable {

  private static final int CHUNK = 8;

  private final int threads;
  private final ExecutorService pool;

  Crew(int threads) {
    this.threads = threads;
    this.pool = Executors.newFixedThreadPool(threads);
  }

  /** What a thread does with each number, with tools of its own. */
  @FunctionalInterface
  interface Work {
    IntConsumer with(Kernel kernel);
  }

  /** Begins something that one thread does while others go on. */
  <T> Future<T> begin(Callable<T> job) {
    return pool.submit(job);
  }

  /**
   * Threads take the numbers below {@code count} in small chunks, from the last down, since slabs
   * and decks, which take longest, are mostly written after the steel; each result has its own
   * place.
   */
  void each(int count, Work work) {
    var left = new AtomicInteger(count);
    var jobs = new ArrayList<Future<?>>();
    for (int t = 0; t < threads; t++) {
      jobs.add(
          pool.submit(
              () -> {
                IntConsumer step = work.with(new Kernel(Tolerance.DEFAULT));
                int before = left.getAndAdd(-CHUNK);
                while (before > 0) {
                  for (int i = before - 1; i >= Math.max(0, before - CHUNK); i--) {
                    step.accept(i);
                  }
                  before = left.getAndAdd(-CHUNK);
                }
              }));
    }
    jobs.forEach(Crew::result);
  }

  /** Waits for what was begun. */
  static <T> T result(Future<T> job) {
    try {
      return job.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException("measuring was interrupted");
    } catch (ExecutionException e) {
      throw new IllegalStateException("measuring an element failed", e.getCause());
    }
  }

  @Override
  public void close() {
    pool.shutdownNow();
  }
}
