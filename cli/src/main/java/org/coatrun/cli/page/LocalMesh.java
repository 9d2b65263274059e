package org.coatrun.cli.page;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * A welded mesh in the frame of its element, as it stands in the {@link GeometryBlock}: vertices on
 * 16-bit numbers at 0.5 mm, coarser for meshes beyond 16 m. Like meshes are equal.
 */
final class LocalMesh {

  private static final double STEP_M = 0.0005;
  private static final int HEAD = 12;
  private static final int[] BOX = {
    0, 2, 1, 1, 2, 3, 4, 5, 6, 5, 7, 6, 0, 1, 4, 1, 5, 4, 2, 6, 3, 3, 6, 7, 0, 4, 2, 2, 4, 6, 1, 3,
    5, 3, 7, 5
  };

  private final ByteBuffer bytes;
  private final int hash;

  private LocalMesh(ByteBuffer bytes) {
    this.bytes = bytes;
    this.hash = bytes.hashCode();
  }

  static LocalMesh of(PageMesh mesh) {
    double most = most(mesh.points());
    double scale = Math.max(STEP_M, most / Short.MAX_VALUE);
    return of(WeldedMesh.of(mesh, scale), (float) scale);
  }

  /** The greatest distance from nought of any number. */
  private static double most(double[] numbers) {
    double most = 0;
    for (double number : numbers) {
      most = Math.max(most, Math.abs(number));
    }
    return most;
  }

  /**
   * {@code u32 vertices, u32 triangles, f32 scale, i16 xyz, u16 corners, u8 states}, the lists
   * padded to four bytes, little-endian.
   */
  ByteBuffer bytes() {
    return bytes.duplicate();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LocalMesh mesh && bytes.equals(mesh.bytes);
  }

  @Override
  public int hashCode() {
    return hash;
  }

  /** Metres a step of the grid. */
  double scale() {
    return little().getFloat(8);
  }

  /** As it was before it became bytes. */
  WeldedMesh welded() {
    ByteBuffer in = little();
    short[] grid = new short[3 * in.getInt(0)];
    int[] corners = new int[3 * in.getInt(4)];
    byte[] states = new byte[in.getInt(4)];
    in.position(HEAD);
    for (int i = 0; i < grid.length; i++) {
      grid[i] = in.getShort();
    }
    in.position(padded(in.position()));
    for (int i = 0; i < corners.length; i++) {
      corners[i] = Short.toUnsignedInt(in.getShort());
    }
    in.position(padded(in.position()));
    in.get(states);
    return new WeldedMesh(grid, corners, states);
  }

  /** How many triangles it has. */
  int triangles() {
    return little().getInt(4);
  }

  /** The area of the box around it, in its own axes, square metres. */
  double boxArea() {
    short[] c = corners();
    double scale = little().getFloat(8);
    double x = (c[3] - c[0]) * scale;
    double y = (c[4] - c[1]) * scale;
    double z = (c[5] - c[2]) * scale;
    return 2 * (x * y + y * z + z * x);
  }

  /** A plain box around it, exposed all over. */
  LocalMesh box() {
    short[] own = welded().grid();
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
    return of(new WeldedMesh(grid, BOX, new byte[BOX.length / 3]), (float) (scale() * coarser));
  }

  /** Least and greatest x, y, z in steps of the scale. */
  private short[] corners() {
    ByteBuffer in = little();
    int vertices = in.getInt(0);
    short[] c = new short[6];
    for (int i = 0; i < 3 * vertices; i++) {
      short at = in.getShort(HEAD + 2 * i);
      int k = i % 3;
      c[k] = i < 3 ? at : (short) Math.min(c[k], at);
      c[k + 3] = i < 3 ? at : (short) Math.max(c[k + 3], at);
    }
    return c;
  }

  private ByteBuffer little() {
    return bytes.duplicate().order(ByteOrder.LITTLE_ENDIAN);
  }

  private static LocalMesh of(WeldedMesh welded, float scale) {
    int triangles = welded.states().length;
    int size = HEAD + padded(2 * welded.grid().length) + padded(2 * welded.corners().length);
    ByteBuffer out = ByteBuffer.allocate(size + padded(triangles)).order(ByteOrder.LITTLE_ENDIAN);
    out.putInt(welded.grid().length / 3).putInt(triangles).putFloat(scale);
    for (short c : welded.grid()) {
      out.putShort(c);
    }
    out.position(padded(out.position()));
    for (int corner : welded.corners()) {
      out.putShort((short) corner);
    }
    out.position(padded(out.position()));
    out.put(welded.states());
    return new LocalMesh(out.rewind().asReadOnlyBuffer());
  }

  private static int padded(int size) {
    return (size + 3) & ~3;
  }
}
