package org.coatrun.geometry.solid;

import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * Slices a solid by a plane into the region that it fills there, in the plane's own axes.
 *
 * <p>Sliced just behind (-1) or just in front (+1) of the plane, by sign and not by distance, so
 * that faces in the plane need no special case. Where the outline does not close, as with solids
 * that cross themselves, the plane is moved a little and the slice counted as moved; where that
 * does not help either the region is empty and counted as open. Not for use by several threads.
 */
final class Slicer {

  private static final double[] MOVES = {1e-8, 1e-7, 1e-6, 1e-5};

  private final Tolerance tolerance;
  private final Segments segments = new Segments();
  private final Crossings crossings = new Crossings(segments);
  private final Chains chains = new Chains();
  private long moved;
  private long open;

  Slicer(Tolerance tolerance) {
    this.tolerance = tolerance;
  }

  /** Region that the solid fills; empty for an open solid. */
  Geometry slice(Solid solid, Plane plane, int side) {
    return slice(solid, plane, side, null);
  }

  /**
   * The same, but where the region's box misses the window (least u, v, greatest u, v) the answer
   * may simply be empty.
   */
  Geometry slice(Solid solid, Plane plane, int side, double[] window) {
    if (!solid.closed() || !crossings.collect(solid, plane, side, tolerance.plane())) {
      return Overlay.EMPTY;
    }
    if (window != null && misses(window)) {
      return Overlay.EMPTY;
    }
    List<double[]> rings = chains.rings(segments, 10 * tolerance.plane(), 2 * tolerance.plane());
    if (rings == null) {
      rings = movedRings(solid, plane, side);
    }
    return rings == null || rings.isEmpty() ? Overlay.EMPTY : Rings.region(rings);
  }

  /** Slices so far that needed the plane moved. */
  long moved() {
    return moved;
  }

  /** Slices so far whose outline could not be closed. */
  long open() {
    return open;
  }

  private boolean misses(double[] w) {
    return segments.maxU < w[0]
        || segments.maxV < w[1]
        || segments.minU > w[2]
        || segments.minV > w[3];
  }

  private List<double[]> movedRings(Solid solid, Plane plane, int side) {
    for (double step : MOVES) {
      if (crossings.collect(solid, plane.moved(side * step), side, tolerance.plane())) {
        List<double[]> rings =
            chains.rings(segments, 10 * tolerance.plane(), 2 * tolerance.plane());
        if (rings != null) {
          moved++;
          return rings;
        }
      }
    }
    open++;
    return null;
  }
}
