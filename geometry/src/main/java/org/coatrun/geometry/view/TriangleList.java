package org.coatrun.geometry.view;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.geometry.solid.Plane;

/** Gathers convex rings of planes as triangles. */
final class TriangleList {

  private record Fan(Plane plane, double[] ring, boolean coated) {}

  private final List<Fan> fans = new ArrayList<>();
  private int corners;
  private int triangles;

  /**
   * Adds rings, each as a fan.
   *
   * @param rings u and v in turn, on the axes of the plane
   */
  void add(Plane plane, List<double[]> rings, boolean coated) {
    for (double[] ring : rings) {
      fans.add(new Fan(plane, ring, coated));
      corners += ring.length / 2;
      triangles += ring.length / 2 - 2;
    }
  }

  Triangles all() {
    double[] points = new double[3 * corners];
    int[] numbers = new int[3 * triangles];
    boolean[] coated = new boolean[triangles];
    int corner = 0;
    int triangle = 0;
    for (Fan fan : fans) {
      double[] ring = fan.ring;
      int first = corner;
      for (int i = 0; i < ring.length; i += 2) {
        points[3 * corner] = fan.plane.x(ring[i], ring[i + 1]);
        points[3 * corner + 1] = fan.plane.y(ring[i], ring[i + 1]);
        points[3 * corner + 2] = fan.plane.z(ring[i], ring[i + 1]);
        corner++;
      }
      for (int last = first + 2; last < corner; last++) {
        numbers[3 * triangle] = first;
        numbers[3 * triangle + 1] = last - 1;
        numbers[3 * triangle + 2] = last;
        coated[triangle++] = fan.coated;
      }
    }
    return new Triangles(points, numbers, coated);
  }
}
