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
    Map<LocalMesh, Integer> uses = new LinkedHashMap<>();
    bodies.forEach(b -> b.meshes().forEach(m -> uses.merge(m, 1, Integer::sum)));
    long room = triangles;
    for (Map.Entry<LocalMesh, Integer> use : uses.entrySet()) {
      room -= (long) use.getValue() * Math.min(OF_A_BOX, use.getKey().triangles());
    }
    List<Map.Entry<LocalMesh, Integer>> best =
        uses.entrySet().stream()
            .filter(u -> u.getKey().triangles() > OF_A_BOX)
            .sorted(Comparator.comparingDouble(u -> u.getKey().triangles() / area(u.getKey())))
            .toList();
    for (Map.Entry<LocalMesh, Integer> use : best) {
      long more = (long) use.getValue() * (use.getKey().triangles() - OF_A_BOX);
      if (more <= room) {
        room -= more;
      } else {
        plain.put(use.getKey(), use.getKey().box());
      }
    }
  }

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
