package org.coatrun.ifcimport.part21;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Scans a file in chunks on several threads, with the very result of a scan from end to end.
 *
 * <p>Where a chunk begins inside a text or a comment cannot be known without reading all before it.
 * So each thread guesses the first beginning of a record in its chunk. Afterwards the chunks are
 * joined in order: a chunk counts if its guess is where the one before it ended; else it is scanned
 * again from there. A wrong guess costs time, never correctness.
 */
final class ParallelScan {

  private static final int LARGEST_WINDOW = 1 << 20;

  private final ByteSource source;
  private final NameTable names;
  private final int threads;
  private final int window;
  private final Chunk[] chunks;
  private final AtomicInteger taken = new AtomicInteger();
  private final AtomicReference<Throwable> failure = new AtomicReference<>();

  ParallelScan(ByteSource source, NameTable names, StepOptions options) {
    this.source = source;
    this.names = names;
    int count = Math.toIntExact((source.size() - 1) / options.chunkBytes() + 1);
    this.threads = Math.min(options.threads(), count);
    this.window = Math.min(options.chunkBytes(), LARGEST_WINDOW);
    this.chunks = new Chunk[count];
    for (int i = 0; i < count; i++) {
      long begin = (long) i * options.chunkBytes();
      chunks[i] = new Chunk(begin, Math.min(source.size(), begin + options.chunkBytes()));
    }
  }

  /** The chunks that hold the file's statements from a place on, in order, each statement once. */
  List<Chunk> from(long start) {
    chunks[0].guess(start);
    runWorkers();
    return join(start);
  }

  private void runWorkers() {
    Thread[] helpers = new Thread[threads - 1];
    for (int i = 0; i < helpers.length; i++) {
      helpers[i] = new Thread(this::work, "scan-" + (i + 1));
      helpers[i].setDaemon(true);
      helpers[i].start();
    }
    work();
    for (Thread helper : helpers) {
      await(helper);
    }
    Throwable failed = failure.get();
    if (failed instanceof Error error) {
      throw error;
    } else if (failed instanceof RuntimeException exception) {
      throw exception;
    }
  }

  private static void await(Thread helper) {
    boolean interrupted = false;
    while (helper.isAlive()) {
      try {
        helper.join();
      } catch (InterruptedException e) {
        interrupted = true; // the helper ends soon by itself; the caller is told afterwards
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private void work() {
    try {
      StatementScanner scanner = new StatementScanner(source, names, window);
      int i = taken.getAndIncrement();
      while (i < chunks.length && failure.get() == null) {
        chunks[i].scanFromGuess(scanner);
        i = taken.getAndIncrement();
      }
    } catch (RuntimeException | Error e) {
      failure.compareAndSet(null, e);
    }
  }

  private List<Chunk> join(long start) {
    List<Chunk> joined = new ArrayList<>();
    StatementScanner scanner = null;
    long at = start;
    for (Chunk chunk : chunks) {
      if (at >= chunk.until) {
        continue; // a statement of an earlier chunk reaches over this one
      }
      if (chunk.first() != at) {
        scanner = scanner == null ? new StatementScanner(source, names, window) : scanner;
        chunk.scan(scanner, at);
      }
      joined.add(chunk);
      at = chunk.next();
    }
    return joined;
  }
}
