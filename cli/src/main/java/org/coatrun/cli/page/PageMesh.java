package org.coatrun.cli.page;

import org.coatrun.shared.shape.Transform3;

/**
 * Triangles of one element.
 *
 * @param frame rigid frame of the element: like elements share one mesh in their own frames
 * @param points x, y, z of each vertex in world axes, metres
 * @param corners three vertex numbers a triangle
 * @param states one a triangle: 0 exposed, 1 covered or not coated
 */
record PageMesh(Transform3 frame, double[] points, int[] corners, byte[] states) {

  PageMesh {
    if (corners.length != 3 * states.length || points.length % 3 != 0) {
      throw new IllegalArgumentException("a mesh whose lists do not match");
    }
  }
}
