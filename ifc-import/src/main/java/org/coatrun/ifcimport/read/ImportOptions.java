package org.coatrun.ifcimport.read;

/**
 * How models are read.
 *
 * @param acceptTruncated whether what stands before the cut of a truncated file is used
 * @param threads how many threads may work, at least 1; the result never depends on it
 */
public record ImportOptions(boolean acceptTruncated, int threads) {

  /** Refuses truncated files, uses each processor. */
  public static final ImportOptions DEFAULT =
      new ImportOptions(false, Runtime.getRuntime().availableProcessors());

  public ImportOptions {
    if (threads < 1) {
      throw new IllegalArgumentException("at least one thread is needed");
    }
  }

  /** The same, and a truncated file is used as far as it goes. */
  public ImportOptions acceptingTruncated() {
    return new ImportOptions(true, threads);
  }
}
