package org.coatrun.cli.page;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * A mesh on whole steps of a scale, each vertex once.
 *
 * <p>Triangles of different states share no vertex; those that the grid makes flat are dropped.
 *
 * @param grid x, y, z of each vertex in steps
 * @param corners three vertex numbers a triangle
 * @param states one a triangle
 */
record WeldedMesh(short[] grid, int[] corners, byte[] states) {

  private record Spot(short x, short y, short z, byte state) {}

  /** Welds a mesh whose vertices stand at {@code xyz} in its own frame. */
  static WeldedMesh of(PageMesh mesh, double[] xyz, double scale) {
    Map<Spot, Integer> numbers = new HashMap<>();
    short[] grid = new short[9 * mesh.states().length];
    int[] corners = new int[3 * mesh.states().length];
    byte[] states = new byte[mesh.states().length];
    int kept = 0;
    for (int t = 0; t < states.length; t++) {
      for (int k = 0; k < 3; k++) {
        int v = mesh.corners()[3 * t + k];
        Spot spot =
            new Spot(
                steps(xyz[3 * v], scale),
                steps(xyz[3 * v + 1], scale),
                steps(xyz[3 * v + 2], scale),
                mesh.states()[t]);
        int number = numbers.computeIfAbsent(spot, s -> numbers.size());
        grid[3 * number] = spot.x();
        grid[3 * number + 1] = spot.y();
        grid[3 * number + 2] = spot.z();
        corners[3 * kept + k] = number;
      }
      if (isTriangle(corners, 3 * kept)) {
        states[kept++] = mesh.states()[t];
      }
    }
    return new WeldedMesh(
        Arrays.copyOf(grid, 3 * numbers.size()),
        Arrays.copyOf(corners, 3 * kept),
        Arrays.copyOf(states, kept));
  }

  private static boolean isTriangle(int[] c, int at) {
    return c[at] != c[at + 1] && c[at + 1] != c[at + 2] && c[at] != c[at + 2];
  }

  private static short steps(double metres, double scale) {
    return (short) Math.round(metres / scale);
  }
}
