package org.coatrun.geometry.surface;

/**
 * How surfaces are measured.
 *
 * @param threads elements measured side by side, at least one; the result does not depend on it
 */
public record SurfaceOptions(int threads) {

  public SurfaceOptions {
    if (threads < 1) {
      throw new IllegalArgumentException("measuring needs at least one thread: " + threads);
    }
  }

  /** As many threads as the machine has processors. */
  public static SurfaceOptions defaults() {
    return new SurfaceOptions(Runtime.getRuntime().availableProcessors());
  }
}
