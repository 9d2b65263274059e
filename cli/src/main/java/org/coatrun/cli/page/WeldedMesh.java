package org.coatrun.cli.page;

import java.util.Arrays;

/**
 * A mesh on whole steps of a scale, each vertex once.
 *
 * <p>Triangles of different states share no vertex; those that the grid makes flat are dropped.
 *
 * @param grid x, y, z of each vertex in steps
 * @param corners three vertex numbers a triangle
 * @param states one a triangle
 */
record WeldedMesh(short[] grid, char[] corners, byte[] states) {

  static WeldedMesh of(PageMesh mesh, double scale) {
    double[] xyz = mesh.points();
    int most = Math.min(3 * mesh.states().length, 2 * (xyz.length / 3)); // of two states each
    Numbers numbers = new Numbers(most);
    short[] grid = new short[3 * most];
    char[] corners = new char[3 * mesh.states().length];
    byte[] states = new byte[mesh.states().length];
    int[] known = new int[xyz.length / 3]; // mostly of one state: its number, counted from one
    byte[] knownState = new byte[known.length];
    int kept = 0;
    for (int t = 0; t < states.length; t++) {
      byte state = mesh.states()[t];
      for (int k = 0; k < 3; k++) {
        int v = mesh.corners()[3 * t + k];
        if (known[v] == 0 || knownState[v] != state) {
          short x = steps(xyz[3 * v], scale);
          short y = steps(xyz[3 * v + 1], scale);
          short z = steps(xyz[3 * v + 2], scale);
          int number = numbers.of(spot(x, y, z, state));
          grid[3 * number] = x;
          grid[3 * number + 1] = y;
          grid[3 * number + 2] = z;
          known[v] = number + 1;
          knownState[v] = state;
        }
        corners[3 * kept + k] = (char) (known[v] - 1);
      }
      if (isTriangle(corners, 3 * kept)) {
        states[kept++] = state;
      }
    }
    return new WeldedMesh(
        Arrays.copyOf(grid, 3 * numbers.count),
        Arrays.copyOf(corners, 3 * kept),
        Arrays.copyOf(states, kept));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof WeldedMesh mesh
        && Arrays.equals(grid, mesh.grid)
        && Arrays.equals(corners, mesh.corners)
        && Arrays.equals(states, mesh.states);
  }

  @Override
  public int hashCode() {
    int hash = Arrays.hashCode(states);
    hash = 31 * hash + Arrays.hashCode(corners);
    return 31 * hash + Arrays.hashCode(grid);
  }

  /** Least and greatest x, y, z. */
  short[] box() {
    short[] box = new short[6];
    for (int i = 0; i < grid.length; i++) {
      int k = i % 3;
      box[k] = i < 3 || grid[i] < box[k] ? grid[i] : box[k];
      box[k + 3] = i < 3 || grid[i] > box[k + 3] ? grid[i] : box[k + 3];
    }
    return box;
  }

  /** A vertex and a state in one number: what tells vertices apart is asked very often. */
  private static long spot(short x, short y, short z, byte state) {
    return (x & 0xFFFFL) << 40 | (y & 0xFFFFL) << 24 | (z & 0xFFFFL) << 8 | (state & 0xFFL);
  }

  private static boolean isTriangle(char[] c, int at) {
    return c[at] != c[at + 1] && c[at + 1] != c[at + 2] && c[at] != c[at + 2];
  }

  private static short steps(double metres, double scale) {
    double up = metres / scale + 0.5;
    int whole = (int) up;
    return (short) (whole > up ? whole - 1 : whole);
  }

  /** Numbers spots as they come up, each once; boxed ones took most of a mesh's time. */
  private static final class Numbers {
    private final long[] spots;
    private final int[] numbers;
    private int count;

    private Numbers(int most) {
      spots = new long[Integer.highestOneBit(most + 1) << 2];
      numbers = new int[spots.length];
    }

    private int of(long spot) {
      int at = (int) ((spot * 0x9E37_79B9_7F4A_7C15L) >>> 32) & (spots.length - 1);
      while (numbers[at] != 0 && spots[at] != spot) {
        at = (at + 1) & (spots.length - 1);
      }
      if (numbers[at] == 0) {
        spots[at] = spot;
        numbers[at] = ++count;
      }
      return numbers[at] - 1;
    }
  }
}
