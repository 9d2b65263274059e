package org.coatrun.ifcimport.read;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.LongConsumer;
import java.util.function.LongFunction;
import java.util.function.Supplier;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/** The threads that read a building. What comes out never depends on how many they are. */
final class Workers implements AutoCloseable {

  private static final int FEW = 256;

  /** Null where there is but the caller's own thread. */
  private final ForkJoinPool pool;

  Workers(int threads) {
    pool = threads == 1 ? null : new ForkJoinPool(threads);
  }

  /** What each number comes to, in the order of the numbers; null results are passed over. */
  <T> List<T> map(long[] ids, LongFunction<T> work) {
    if (pool == null || ids.length < FEW) {
      return LongStream.of(ids).mapToObj(work).filter(Objects::nonNull).toList();
    }
    return pool.submit(
            () -> LongStream.of(ids).parallel().mapToObj(work).filter(Objects::nonNull).toList())
        .join();
  }

  /** Does something with each number, in no order. */
  void each(long[] ids, LongConsumer work) {
    if (pool == null) {
      LongStream.of(ids).forEach(work);
    } else {
      pool.submit(() -> LongStream.of(ids).parallel().forEach(work)).join();
    }
  }

  /** Does things that know nothing of each other side by side, and returns when all are done. */
  void together(Runnable... tasks) {
    if (pool == null) {
      Stream.of(tasks).forEach(Runnable::run);
    } else {
      List<ForkJoinTask<?>> running = Stream.<Runnable>of(tasks).map(pool::submit).toList();
      running.forEach(ForkJoinTask::join);
    }
  }

  /** Begins something whose result is asked for later. */
  <T> Supplier<T> begin(Supplier<T> task) {
    if (pool == null) {
      T result = task.get();
      return () -> result;
    }
    return pool.submit(task::get)::join;
  }

  @Override
  public void close() {
    if (pool != null) {
      pool.shutdown();
    }
  }
}
