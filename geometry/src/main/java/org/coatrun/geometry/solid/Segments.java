package org.coatrun.geometry.solid;

import java.util.Arrays;

/** Directed pieces of the outline of a slice; inside lies left. A growing table, reused. */
final class Segments {

  double[] from = new double[128];
  double[] to = new double[128];
  int[] face = new int[64];
  int size;
  double minU;
  double minV;
  double maxU;
  double maxV;

  void clear() {
    size = 0;
    minU = Double.POSITIVE_INFINITY;
    minV = Double.POSITIVE_INFINITY;
    maxU = Double.NEGATIVE_INFINITY;
    maxV = Double.NEGATIVE_INFINITY;
  }

  void add(double u0, double v0, double u1, double v1, int faceNumber) {
    if (size == face.length) {
      from = Arrays.copyOf(from, 4 * size);
      to = Arrays.copyOf(to, 4 * size);
      face = Arrays.copyOf(face, 2 * size);
    }
    from[2 * size] = u0;
    from[2 * size + 1] = v0;
    to[2 * size] = u1;
    to[2 * size + 1] = v1;
    face[size++] = faceNumber;
    minU = Math.min(minU, Math.min(u0, u1));
    maxU = Math.max(maxU, Math.max(u0, u1));
    minV = Math.min(minV, Math.min(v0, v1));
    maxV = Math.max(maxV, Math.max(v0, v1));
  }
}
