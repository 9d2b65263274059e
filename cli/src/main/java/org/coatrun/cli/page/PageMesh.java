package org.coatrun.cli.page;

/**
 * Triangles of one element.
 *
 * @param points x, y, z of each vertex in the frame of the element, metres
 * @param corners three vertex numbers a triangle
 * @param states one a triangle: 0 exposed, 1 covered or not coated
 */
record PageMesh(double[] points, int[] corners, byte[] states) {

  PageMesh {
    if (corners.length != 3 * states.length || points.length % 3 != 0) {
      throw new IllegalArgumentException("a mesh whose lists do not match");
    }
  }
}
