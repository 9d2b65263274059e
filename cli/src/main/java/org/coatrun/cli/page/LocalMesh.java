package org.coatrun.cli.page;

import java.nio.ByteBuffer;

/**
 * A welded mesh in the frame of its element: vertices on 16-bit numbers at 0.5 mm, coarser for
 * meshes beyond 16 m. Like meshes are equal.
 */
final class LocalMesh {

  private static final double STEP_M = 0.0005;
  private static final int HEAD = 12;
  private static final char[] BOX = {
    0, 2, 1, 1, 2, 3, 4, 5, 6, 5, 7, 6, 0, 1, 4, 1, 5, 4, 2, 6, 3, 3, 6, 7, 0, 4, 2, 2, 4, 6, 1, 3,
    5, 3, 7, 5
  };

  private final WeldedMesh welded;
  private final float scale;
  private final int hash;

  private LocalMesh(WeldedMesh welded, float scale) {
    this.welded = welded;
    this.scale = scale;
    this.hash = 31 * welded.hashCode() + Float.hashCode(scale);
  }

  static LocalMesh of(PageMesh mesh) {
    double most = most(mesh.points());
    double scale = Math.max(STEP_M, most / Short.MAX_VALUE);
    return new LocalMesh(WeldedMesh.of(mesh, scale), (float) scale);
  }

  /** The greatest distance from nought of any number. */
  private static double most(double[] numbers) {
    double most = 0;
    for (double number : numbers) {
      double distance = Math.abs(number);
      most = distance > most ? distance : most;
    }
    return most;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LocalMesh mesh && scale == mesh.scale && welded.equals(mesh.welded);
  }

  @Override
  public int hashCode() {
    return hash;
  }

  /** Metres a step of the grid. */
  double scale() {
    return scale;
  }

  /** The mesh in steps of the grid. */
  WeldedMesh welded() {
    return welded;
  }

  /** How many triangles it has. */
  int triangles() {
    return welded.states().length;
  }

  /** The area of the box around it, in its own axes, square metres. */
  double boxArea() {
    short[] c = welded.box();
    double x = (c[3] - c[0]) * (double) scale;
    double y = (c[4] - c[1]) * (double) scale;
    double z = (c[5] - c[2]) * (double) scale;
    return 2 * (x * y + y * z + z * x);
  }

  /** A plain box around it, exposed all over. */
  LocalMesh box() {
    short[] own = welded.grid();
    double[] points = new double[own.length];
    for (int i = 0; i < own.length; i++) {
      points[i] = own[i];
    }
    double[] box = PlainBox.around(points);
    double most = most(box);
    double coarser = Math.max(1, most / Short.MAX_VALUE);
    short[] grid = new short[box.length];
    for (int i = 0; i < grid.length; i++) {
      grid[i] = (short) Math.round(box[i] / coarser);
    }
    WeldedMesh plain = new WeldedMesh(grid, BOX, new byte[BOX.length / 3]);
    return new LocalMesh(plain, (float) (scale() * coarser));
  }

  /** How many bytes {@link #put} takes. */
  int size() {
    return HEAD
        + padded(2 * welded.grid().length)
        + padded(2 * welded.corners().length)
        + padded(welded.states().length);
  }

  /**
   * As it stands in the {@link GeometryBlock}: {@code u32 vertices, u32 triangles, f32 scale, i16
   * xyz, u16 corners, u8 states}, the lists padded to four bytes, little-endian.
   *
   * @param out of that order of bytes, at a multiple of four, noughts from there on
   */
  void put(ByteBuffer out) {
    out.putInt(welded.grid().length / 3).putInt(triangles()).putFloat(scale);
    int from = out.position();
    out.asShortBuffer().put(welded.grid());
    from += padded(2 * welded.grid().length);
    out.position(from).asCharBuffer().put(welded.corners());
    from += padded(2 * welded.corners().length);
    out.position(from).put(welded.states()).position(from + padded(triangles()));
  }

  private static int padded(int size) {
    return (size + 3) & ~3;
  }
}
