package org.coatrun.geometry.surface;

import java.util.Optional;
import java.util.function.Consumer;
import org.coatrun.geometry.exposure.ExposureOptions;
import org.coatrun.geometry.view.ElementMesh;

/**
 * How surfaces are measured.
 *
 * @param threads elements measured side by side, at least one; the result does not depend on it
 * @param exposure what counts as covered and as a hole
 * @param meshes hears of the picture of each element, from several threads, where one is wanted
 */
public record SurfaceOptions(
    int threads, ExposureOptions exposure, Optional<Consumer<ElementMesh>> meshes) {

  /** So many threads, and the stated defaults for contact and holes. */
  public SurfaceOptions(int threads) {
    this(threads, ExposureOptions.defaults(), Optional.empty());
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

  /** The same, with other limits for contact and holes. */
  public SurfaceOptions withExposure(ExposureOptions other) {
    return new SurfaceOptions(threads, other, meshes);
  }

  /** The same, and each element's picture is handed over. */
  public SurfaceOptions withMeshes(Consumer<ElementMesh> sink) {
    return new SurfaceOptions(threads, exposure, Optional.of(sink));
  }
}
