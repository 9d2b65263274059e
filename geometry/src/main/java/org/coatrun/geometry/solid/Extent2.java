package org.coatrun.geometry.solid;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** A box in a plane: least and greatest u and v. */
record Extent2(double minU, double minV, double maxU, double maxV) {

  static Extent2 of(double[] ring) {
    double minU = ring[0];
    double minV = ring[1];
    double maxU = minU;
    double maxV = minV;
    for (int i = 2; i < ring.length; i += 2) {
      double u = ring[i];
      double v = ring[i + 1];
      minU = u < minU ? u : minU;
      minV = v < minV ? v : minV;
      maxU = u > maxU ? u : maxU;
      maxV = v > maxV ? v : maxV;
    }
    return new Extent2(minU, minV, maxU, maxV);
  }

  static Extent2 of(Geometry region) {
    Envelope e = region.getEnvelopeInternal();
    return new Extent2(e.getMinX(), e.getMinY(), e.getMaxX(), e.getMaxY());
  }

  Extent2 plus(Extent2 o) {
    return new Extent2(
        Math.min(minU, o.minU),
        Math.min(minV, o.minV),
        Math.max(maxU, o.maxU),
        Math.max(maxV, o.maxV));
  }

  /** Whether the two share no more than a strip of a width. */
  boolean isApart(Extent2 o, double width) {
    return maxU - o.minU <= width
        || o.maxU - minU <= width
        || maxV - o.minV <= width
        || o.maxV - minV <= width
        || maxU - minU <= width
        || o.maxU - o.minU <= width
        || maxV - minV <= width
        || o.maxV - o.minV <= width;
  }
}
