package org.coatrun.geometry.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Makes a {@link Solid} from vertices and faces, and checks it.
 *
 * <p>Faces without area are dropped and faces that do not lie in one plane are cut into triangles;
 * both are counted. A closed solid whose volume is negative is turned. Whether it is closed is
 * found from the edges, not taken from the caller.
 */
public final class SolidBuilder {

  private final Tolerance tolerance;
  private final List<Face> faces = new ArrayList<>();
  private double[] xyz = new double[96];
  private int vertices;
  private int dropped;
  private int bent;

  public SolidBuilder() {
    this(Tolerance.DEFAULT);
  }

  public SolidBuilder(Tolerance tolerance) {
    this.tolerance = tolerance;
  }

  /**
   * Adds a vertex and returns its number. Vertices are shared by number only: one place, one
   * number, or the solid will not be closed (meshes are welded by {@link Welder} first).
   *
   * @throws IllegalArgumentException where a coordinate is not finite
   */
  public int vertex(double x, double y, double z) {
    if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
      throw new IllegalArgumentException("a vertex that is not finite: " + x + ", " + y + ", " + z);
    }
    if (3 * vertices + 3 > xyz.length) {
      xyz = Arrays.copyOf(xyz, 2 * xyz.length);
    }
    xyz[3 * vertices] = x;
    xyz[3 * vertices + 1] = y;
    xyz[3 * vertices + 2] = z;
    return vertices++;
  }

  /**
   * Adds a face.
   *
   * @param stretch true area over flat area, 1 for a face that is flat in truth
   * @param loops vertex numbers without a repeated last one: the outer ring counter-clockwise seen
   *     from outside, then the holes the other way round
   * @throws IllegalArgumentException for a stretch that is not positive, a missing ring or a vertex
   *     number that was never given out
   */
  public void face(FaceLabel label, double stretch, int[]... loops) {
    if (!(stretch > 0) || !Double.isFinite(stretch)) {
      throw new IllegalArgumentException("a stretch must be positive: " + stretch);
    }
    if (loops.length == 0) {
      throw new IllegalArgumentException("a face without a ring");
    }
    int[][] clean = new int[loops.length][];
    int kept = 0;
    for (int i = 0; i < loops.length; i++) {
      int[] ring = withoutRepeats(loops[i]);
      if (ring.length >= 3) {
        clean[kept++] = ring;
      } else if (i == 0) {
        dropped++;
        return;
      }
    }
    add(label, stretch, Arrays.copyOf(clean, kept), true);
  }

  /** Faces left out so far because they have no area. */
  public int dropped() {
    return dropped;
  }

  /** Faces so far that did not lie in one plane and were cut into triangles. */
  public int bent() {
    return bent;
  }

  /**
   * The solid.
   *
   * @throws IllegalArgumentException where no face with an area was given
   */
  public Solid build() {
    if (faces.isEmpty()) {
      throw new IllegalArgumentException("a solid without a face");
    }
    double[] table = Arrays.copyOf(xyz, 3 * vertices);
    Face[] all = faces.toArray(new Face[0]);
    return Solids.finish(table, all);
  }

  private int[] withoutRepeats(int[] ring) {
    int[] out = new int[ring.length];
    int n = 0;
    for (int v : ring) {
      if (v < 0 || v >= vertices) {
        throw new IllegalArgumentException("no vertex " + v);
      }
      if (n == 0 || out[n - 1] != v) {
        out[n++] = v;
      }
    }
    while (n > 1 && out[n - 1] == out[0]) {
      n--;
    }
    return Arrays.copyOf(out, n);
  }

  private void add(FaceLabel label, double stretch, int[][] loops, boolean mayBend) {
    Face face = Solids.face(xyz, loops, label, stretch);
    if (face == null) {
      dropped++;
      return;
    }
    if (mayBend && Solids.bend(xyz, face) > tolerance.flat()) {
      bent++;
      for (int[] triangle : Triangles.of(xyz, face)) {
        add(label, stretch, new int[][] {triangle}, false);
      }
      return;
    }
    faces.add(face);
  }
}
