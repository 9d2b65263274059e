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

  private static final int CHUNK = 32;

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

  /** Threads take numbers in chunks, from 0 to before the last; each result has its own place. */
  void each(int count, Work work) {
    var next = new AtomicInteger();
    var jobs = new ArrayList<Future<?>>();
    for (int t = 0; t < threads; t++) {
      jobs.add(
          pool.submit(
              () -> {
                IntConsumer step = work.with(new Kernel(Tolerance.DEFAULT));
                int from = next.getAndAdd(CHUNK);
                while (from < count) {
                  for (int i = from; i < Math.min(count, from + CHUNK); i++) {
                    step.accept(i);
                  }
                  from = next.getAndAdd(CHUNK);
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
