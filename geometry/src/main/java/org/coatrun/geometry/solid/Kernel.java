package org.coatrun.geometry.solid;

/**
 * The tools of one thread: slicer and overlay with their scratch tables. Make one per thread; not
 * for use by several.
 */
public final class Kernel {

  final Tolerance tolerance;
  final Slicer slicer;
  final Overlay overlay;

  public Kernel(Tolerance tolerance) {
    this.tolerance = tolerance;
    this.slicer = new Slicer(tolerance);
    this.overlay = new Overlay(tolerance);
  }

  public Tolerance tolerance() {
    return tolerance;
  }

  /** Overlays and differences of regions in one plane. */
  public Overlay overlay() {
    return overlay;
  }

  /** Slices so far whose outline could not be closed: each may have lost a little. */
  public long openSlices() {
    return slicer.open();
  }
}
