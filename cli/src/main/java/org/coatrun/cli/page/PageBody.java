package org.coatrun.cli.page;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.shape.Transform3;

/**
 * The body of one element.
 *
 * @param frame where it stands
 * @param meshes one, or several where there are more corners than sixteen bits can number
 */
record PageBody(Transform3 frame, List<LocalMesh> meshes) {

  private static final int MOST_TRIANGLES = 65_535 / 3;

  PageBody {
    meshes = List.copyOf(meshes);
  }

  static PageBody of(Transform3 frame, PageMesh mesh) {
    if (mesh.points().length / 3 <= 3 * MOST_TRIANGLES) {
      return new PageBody(frame, List.of(LocalMesh.of(mesh)));
    }
    List<LocalMesh> parts = new ArrayList<>();
    for (int from = 0; from < mesh.states().length; from += MOST_TRIANGLES) {
      parts.add(part(mesh, from, Math.min(mesh.states().length, from + MOST_TRIANGLES)));
    }
    return new PageBody(frame, parts);
  }

  int triangles() {
    return meshes.stream().mapToInt(LocalMesh::triangles).sum();
  }

  private static LocalMesh part(PageMesh mesh, int from, int to) {
    double[] points = new double[9 * (to - from)];
    int[] corners = new int[3 * (to - from)];
    byte[] states = new byte[to - from];
    for (int c = 0; c < corners.length; c++) {
      System.arraycopy(mesh.points(), 3 * mesh.corners()[3 * from + c], points, 3 * c, 3);
      corners[c] = c;
    }
    System.arraycopy(mesh.states(), from, states, 0, states.length);
    return LocalMesh.of(new PageMesh(points, corners, states));
  }
}
