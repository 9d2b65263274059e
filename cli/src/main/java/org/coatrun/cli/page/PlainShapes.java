package org.coatrun.cli.page;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which meshes become plain boxes so that all bodies together keep within a number of triangles:
 * those with the most triangles for their size. Like bodies stay alike.
 */
final class PlainShapes {

  private static final int OF_A_BOX = 12;

  /** Meshes that are drawn plainly, and their boxes. */
  private final Map<LocalMesh, LocalMesh> plain = new HashMap<>();

  /**
   * @param bodies in a settled order
   * @param triangles that they may have together; boxes are drawn even where they are more
   */
  PlainShapes(Collection<PageBody> bodies, int triangles) {
    if (bodies.stream().mapToLong(PageBody::triangles).sum() <= triangles) {
      return;
    }
    Map<LocalMesh, Integer> uses = new LinkedHashMap<>();
    bodies.forEach(b -> b.meshes().forEach(m -> uses.merge(m, 1, Integer::sum)));
    long room = triangles;
    for (Map.Entry<LocalMesh, Integer> use : uses.entrySet()) {
      room -= (long) use.getValue() * Math.min(OF_A_BOX, use.getKey().triangles());
    }
    List<Use> best =
        uses.entrySet().stream()
            .filter(u -> u.getKey().triangles() > OF_A_BOX)
            .map(u -> new Use(u.getKey(), u.getValue(), u.getKey().triangles() / area(u.getKey())))
            .sorted(Comparator.comparingDouble(Use::density))
            .toList();
    for (Use use : best) {
      long more = (long) use.count() * (use.mesh().triangles() - OF_A_BOX);
      if (more <= room) {
        room -= more;
      } else {
        plain.put(use.mesh(), use.mesh().box());
      }
    }
  }

  /**
   * A mesh and how many bodies have it.
   *
   * @param density triangles for each square metre of the box around it
   */
  private record Use(LocalMesh mesh, int count, double density) {}

  private static double area(LocalMesh mesh) {
    return Math.max(1e-9, mesh.boxArea());
  }

  /** Whether a part of a body is a plain box. */
  boolean isPlain(PageBody body) {
    return body.meshes().stream().anyMatch(plain::containsKey);
  }

  /** The body as it is drawn. */
  PageBody drawn(PageBody body) {
    return isPlain(body)
        ? new PageBody(
            body.frame(), body.meshes().stream().map(m -> plain.getOrDefault(m, m)).toList())
        : body;
  }
}
