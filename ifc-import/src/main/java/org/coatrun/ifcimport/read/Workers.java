package org.coatrun.ifcimport.read;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.ForkJoinPool;
import java.util.function.LongFunction;
import java.util.stream.LongStream;

/** Reads many elements on several threads; the results come in the order of the numbers. */
final class Workers {

  private final int threads;

  Workers(int threads) {
    this.threads = threads;
  }

  /** What each number comes to; null results are passed over. */
  <T> List<T> map(long[] ids, LongFunction<T> work) {
    if (threads == 1 || ids.length < 256) {
      return LongStream.of(ids).mapToObj(work).filter(Objects::nonNull).toList();
    }
    var pool = new ForkJoinPool(threads);
    try {
      return pool.submit(
              () -> LongStream.of(ids).parallel().mapToObj(work).filter(Objects::nonNull).toList())
          .join();
    } finally {
      pool.shutdown();
    }
  }
}
