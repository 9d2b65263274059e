package org.coatrun.cli.page;

import java.util.Arrays;
import org.coatrun.geometry.view.Facets;
import org.coatrun.shared.shape.Vec3;

/**
 * Facets on whole steps of a scale, each vertex once, numbered in the order in which facets use
 * them.
 *
 * <p>Facets of which the grid leaves fewer than three corners are dropped, and one that meets a
 * corner of its own again becomes triangles.
 *
 * @param grid x, y, z of each vertex in steps
 * @param corners vertex numbers, facet after facet
 * @param sizes how many corners each facet has
 * @param states one a facet: 0 exposed, 1 covered or not coated
 */
record WeldedMesh(short[] grid, char[] corners, int[] sizes, byte[] states) {

  /**
   * Welds facets.
   *
   * @param origin of the grid, on the axes of the points
   * @param scale metres a step
   */
  static WeldedMesh of(Facets facets, Vec3 origin, double scale) {
    Welding welding = new Welding(facets, origin, scale);
    int corner = 0;
    for (int f = 0; f < facets.sizes().length; f++) {
      byte state = (byte) (facets.coated()[f] ? 0 : 1);
      welding.add(corner, facets.sizes()[f], state);
      corner += facets.sizes()[f];
    }
    return welding.mesh();
  }

  /** How many triangles the facets are when each is cut from its first corner. */
  int triangles() {
    return corners.length - 2 * sizes.length;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof WeldedMesh mesh
        && Arrays.equals(grid, mesh.grid)
        && Arrays.equals(corners, mesh.corners)
        && Arrays.equals(sizes, mesh.sizes)
        && Arrays.equals(states, mesh.states);
  }

  @Override
  public int hashCode() {
    int hash = Arrays.hashCode(states);
    hash = 31 * hash + Arrays.hashCode(sizes);
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

  /** A mesh while facets are added. */
  private static final class Welding {

    /** Makes no spot nought. */
    private static final long TAKEN = 1L << 48;

    private final float[] points;
    private final Vec3 origin;
    private final double perMetre;
    private final Spots spots;
    private final short[] grid;
    private char[] corners;
    private int[] sizes;
    private byte[] states;

    /** The places of the facet at hand in the table of spots. */
    private int[] ring = new int[16];

    private int vertices;
    private int length;
    private int count;

    private Welding(Facets facets, Vec3 origin, double scale) {
      int all = facets.points().length / 3;
      this.points = facets.points();
      this.origin = origin;
      this.perMetre = 1 / scale;
      this.spots = new Spots(all);
      this.grid = new short[3 * all];
      this.corners = new char[all];
      this.sizes = new int[facets.sizes().length];
      this.states = new byte[sizes.length];
    }

    private void add(int from, int size, byte state) {
      if (ring.length < size) {
        ring = new int[size];
      }
      int kept = 0;
      for (int c = from; c < from + size; c++) {
        int spot = spot(c);
        if (kept == 0 || spot != ring[kept - 1]) {
          ring[kept++] = spot;
        }
      }
      if (kept > 1 && ring[kept - 1] == ring[0]) {
        kept--;
      }
      if (isSimple(kept)) {
        keep(kept, state);
      } else {
        triangles(Arrays.copyOf(ring, kept), state);
      }
    }

    private boolean isSimple(int size) {
      for (int i = 0; i < size - 2; i++) {
        for (int j = i + 2; j < size; j++) {
          if (ring[i] == ring[j]) {
            return false;
          }
        }
      }
      return true;
    }

    private void triangles(int[] all, byte state) {
      for (int i = 2; i < all.length; i++) {
        ring[0] = all[0];
        ring[1] = all[i - 1];
        ring[2] = all[i];
        if (ring[0] != ring[1] && ring[1] != ring[2] && ring[2] != ring[0]) {
          keep(3, state);
        }
      }
    }

    private void keep(int size, byte state) {
      if (size < 3) {
        return;
      }
      room(size);
      for (int i = 0; i < size; i++) {
        corners[length++] = (char) vertex(ring[i]);
      }
      sizes[count] = size;
      states[count++] = state;
    }

    /** There is enough for facets that stay what they are. */
    private void room(int size) {
      if (length + size > corners.length) {
        corners = Arrays.copyOf(corners, 3 * corners.length);
      }
      if (count == sizes.length) {
        sizes = Arrays.copyOf(sizes, 3 * count);
        states = Arrays.copyOf(states, 3 * count);
      }
    }

    /** The number of the vertex on a spot: a new one where none was used there. */
    private int vertex(int spot) {
      if (spots.vertices[spot] == 0) {
        long at = spots.keys[spot];
        grid[3 * vertices] = (short) (at >> 32);
        grid[3 * vertices + 1] = (short) (at >> 16);
        grid[3 * vertices + 2] = (short) at;
        spots.vertices[spot] = ++vertices;
      }
      return spots.vertices[spot] - 1;
    }

    /** The place of a corner in the table of spots. */
    private int spot(int corner) {
      long x = steps(points[3 * corner] - origin.x());
      long y = steps(points[3 * corner + 1] - origin.y());
      long z = steps(points[3 * corner + 2] - origin.z());
      return spots.of(TAKEN | (x & 0xFFFFL) << 32 | (y & 0xFFFFL) << 16 | (z & 0xFFFFL));
    }

    private int steps(double metres) {
      double up = metres * perMetre + 0.5;
      int whole = (int) up;
      return whole > up ? whole - 1 : whole;
    }

    private WeldedMesh mesh() {
      return new WeldedMesh(
          Arrays.copyOf(grid, 3 * vertices),
          Arrays.copyOf(corners, length),
          Arrays.copyOf(sizes, count),
          Arrays.copyOf(states, count));
    }
  }

  /**
   * Where vertices are, in one number each, in a table without boxed ones: they took most of a
   * mesh's time.
   */
  private static final class Spots {

    /** Nought where none is. */
    private final long[] keys;

    /** Of each place of the table the number of its vertex, counted from one; nought for none. */
    private final int[] vertices;

    private Spots(int most) {
      keys = new long[Integer.highestOneBit(most + 1) << 2];
      vertices = new int[keys.length];
    }

    /** The place of a spot in the table. */
    private int of(long key) {
      int at = (int) ((key * 0x9E37_79B9_7F4A_7C15L) >>> 32) & (keys.length - 1);
      while (keys[at] != key && keys[at] != 0) {
        at = (at + 1) & (keys.length - 1);
      }
      keys[at] = key;
      return at;
    }
  }
}
