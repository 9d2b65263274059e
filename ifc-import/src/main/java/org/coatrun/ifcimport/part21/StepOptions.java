package org.coatrun.ifcimport.part21;

/**
 * How a file is opened.
 *
 * @param acceptTruncated whether what stands before the cut of a truncated file is used
 * @param threads how many threads index the file, at least 1
 * @param chunkBytes how much of the file a thread takes at once, at least 16 bytes
 * @param maxUnpackedBytes the most that a container may unpack to
 * @param maxRatio how many times its packed size a container may unpack to
 */
public record StepOptions(
    boolean acceptTruncated, int threads, int chunkBytes, long maxUnpackedBytes, int maxRatio) {

  private static final int CHUNK = 4 << 20;
  private static final long MAX_UNPACKED = 16L << 30;

  /**
   * Building models pack to a fifth or a tenth; even a model of one part repeated stays far below.
   */
  private static final int MAX_RATIO = 200;

  /** Refuses truncated files, uses each processor. */
  public static final StepOptions DEFAULT =
      new StepOptions(
          false, Runtime.getRuntime().availableProcessors(), CHUNK, MAX_UNPACKED, MAX_RATIO);

  public StepOptions {
    if (threads < 1 || chunkBytes < 16 || maxUnpackedBytes < 0 || maxRatio < 1) {
      throw new IllegalArgumentException("options out of range");
    }
  }

  /** The same, and a truncated file is used as far as it goes. */
  public StepOptions acceptingTruncated() {
    return new StepOptions(true, threads, chunkBytes, maxUnpackedBytes, maxRatio);
  }

  /** The same with another way to split the work; the result never depends on it. */
  public StepOptions split(int newThreads, int newChunkBytes) {
    return new StepOptions(acceptTruncated, newThreads, newChunkBytes, maxUnpackedBytes, maxRatio);
  }

  /** The same with other limits for containers. */
  public StepOptions limits(long newMaxUnpackedBytes, int newMaxRatio) {
    return new StepOptions(acceptTruncated, threads, chunkBytes, newMaxUnpackedBytes, newMaxRatio);
  }
}
