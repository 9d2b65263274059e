package org.coatrun.cli.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coatrun.geometry.view.Facets;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/**
 * The body of one element.
 *
 * @param frame where it stands
 * @param meshes one, or several where there are more corners than sixteen bits can number
 */
record PageBody(Transform3 frame, List<LocalMesh> meshes) {

  private static final int MOST_CORNERS = 65_535;

  PageBody {
    meshes = List.copyOf(meshes);
  }

  /**
   * Facets in a frame. Where they lie too far from its origin to be drawn as finely as they could,
   * the body gets a frame of its own about its middle, with the same axes.
   */
  static PageBody of(Transform3 frame, Facets facets) {
    double[] box = box(facets.points());
    double reach = reach(box, Vec3.ZERO);
    Vec3 middle = new Vec3((box[0] + box[3]) / 2, (box[1] + box[4]) / 2, (box[2] + box[5]) / 2);
    if (reach <= LocalMesh.REACH_M) {
      return new PageBody(frame, meshes(facets, Vec3.ZERO, reach));
    }
    return new PageBody(
        frame.after(Transform3.translation(middle)), meshes(facets, middle, reach(box, middle)));
  }

  /** The same elsewhere. */
  PageBody in(Transform3 other) {
    return new PageBody(other.after(frame), meshes);
  }

  int triangles() {
    return meshes.stream().mapToInt(LocalMesh::triangles).sum();
  }

  /** Least and greatest x, y, z. */
  private static double[] box(float[] points) {
    double[] box = new double[6];
    for (int k = 0; k < 3 && k < points.length; k++) {
      float least = points[k];
      float most = points[k];
      for (int i = k + 3; i < points.length; i += 3) {
        float at = points[i];
        least = at < least ? at : least;
        most = at > most ? at : most;
      }
      box[k] = least;
      box[k + 3] = most;
    }
    return box;
  }

  /** How far a box reaches from a point at most, along each axis. */
  private static double reach(double[] box, Vec3 from) {
    double x = Math.max(from.x() - box[0], box[3] - from.x());
    double y = Math.max(from.y() - box[1], box[4] - from.y());
    double z = Math.max(from.z() - box[2], box[5] - from.z());
    return Math.max(x, Math.max(y, z));
  }

  private static List<LocalMesh> meshes(Facets facets, Vec3 origin, double reach) {
    List<LocalMesh> parts = new ArrayList<>();
    int[] sizes = facets.sizes();
    int from = 0;
    int corner = 0;
    int end = 0;
    for (int f = 0; f < sizes.length; f++) {
      if (end + sizes[f] - corner > MOST_CORNERS) {
        parts.add(LocalMesh.of(part(facets, from, f, corner, end), origin, reach));
        from = f;
        corner = end;
      }
      end += sizes[f];
    }
    parts.add(LocalMesh.of(part(facets, from, sizes.length, corner, end), origin, reach));
    return parts;
  }

  private static Facets part(Facets all, int from, int to, int corner, int end) {
    return to - from == all.sizes().length
        ? all
        : new Facets(
            Arrays.copyOfRange(all.points(), 3 * corner, 3 * end),
            Arrays.copyOfRange(all.sizes(), from, to),
            Arrays.copyOfRange(all.coated(), from, to));
  }
}
