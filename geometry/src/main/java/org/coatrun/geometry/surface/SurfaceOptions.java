package org.coatrun.geometry.surface;

import org.coatrun.geometry.exposure.ExposureOptions;

/**
 * How surfaces are measured.
 *
 * @param threads elements measured side by side, at least one; the result does not depend on it
 * @param exposure what counts as covered and as a hole
 */
public record SurfaceOptions(int threads, ExposureOptions exposure) {

  /** So many threads, and the stated defaults for contact and holes. */
  public SurfaceOptions(int threads) {
    this(threads, ExposureOptions.defaults());
  }

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
