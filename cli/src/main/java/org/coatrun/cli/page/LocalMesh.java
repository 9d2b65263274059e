package org.coatrun.cli.page;

import org.coatrun.geometry.view.Facets;
import org.coatrun.shared.shape.Vec3;

/**
 * A welded mesh about an origin of its own: vertices on 16-bit numbers at 0.5 mm, coarser where
 * they lie more than 16 m from that. Like meshes are equal.
 */
final class LocalMesh {

  private static final double STEP_M = 0.0005;

  /** The sides of a box whose corners come x before y before z. */
  private static final int[] BOX = {
    0, 2, 3, 1, 4, 5, 7, 6, 0, 1, 5, 4, 2, 6, 7, 3, 0, 4, 6, 2, 1, 3, 7, 5
  };

  /** The farthest that a vertex may lie from the origin, along each axis, before it is coarser. */
  static final double REACH_M = STEP_M * Short.MAX_VALUE;

  private final WeldedMesh welded;
  private final float scale;
  private final int hash;

  private LocalMesh(WeldedMesh welded, float scale) {
    this.welded = welded;
    this.scale = scale;
    this.hash = 31 * welded.hashCode() + Float.hashCode(scale);
  }

  /**
   * Of facets.
   *
   * @param origin of the mesh, on the axes of the facets
   * @param reach how far they lie from the origin at most, along each axis, metres
   */
  static LocalMesh of(Facets facets, Vec3 origin, double reach) {
    float scale = (float) (STEP_M * Math.max(1, reach / REACH_M));
    return new LocalMesh(WeldedMesh.of(facets, origin, scale), scale);
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
    return welded.triangles();
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
    double reach = 0;
    for (int i = 0; i < own.length; i++) {
      points[i] = own[i] * (double) scale;
    }
    double[] box = PlainBox.around(points);
    float[] corners = new float[3 * BOX.length];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = (float) box[3 * BOX[i / 3] + i % 3];
      reach = Math.max(reach, Math.abs(corners[i]));
    }
    int[] sizes = {4, 4, 4, 4, 4, 4};
    boolean[] exposed = {true, true, true, true, true, true};
    return of(new Facets(corners, sizes, exposed), Vec3.ZERO, reach);
  }
}
