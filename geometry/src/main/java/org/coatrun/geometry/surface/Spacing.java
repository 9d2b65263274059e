package org.coatrun.geometry.surface;

import org.coatrun.shared.shape.Vec3;

/**
 * How far things are apart, on a grid of a nanometre: what stands alike on two floors is equally
 * far apart there, whatever digits were lost on the way up.
 */
final class Spacing {

  private static final double PER_METRE = 1e9;

  /** Further apart than this the grid is finer than numbers are. */
  private static final double FAR_M = 1e6;

  private Spacing() {}

  static Vec3 between(Vec3 from, Vec3 to) {
    return new Vec3(
        onGrid(to.x() - from.x()), onGrid(to.y() - from.y()), onGrid(to.z() - from.z()));
  }

  private static double onGrid(double metres) {
    // adding nought makes minus nought nought, which compares as unlike it
    return Math.abs(metres) < FAR_M ? Math.rint(metres * PER_METRE) / PER_METRE + 0.0 : metres;
  }
}
