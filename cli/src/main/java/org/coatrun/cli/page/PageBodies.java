package org.coatrun.cli.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import org.coatrun.geometry.view.ElementMesh;
import org.coatrun.shared.model.ElementId;

/**
 * Bodies for the page, taken while they are measured, by any number of threads. Like ones are kept
 * once, so that a large building that repeats itself takes little room.
 */
public final class PageBodies implements Consumer<ElementMesh> {

  private final Map<LocalMesh, LocalMesh> meshes = new ConcurrentHashMap<>();
  private final Map<ElementId, PageBody> bodies = new ConcurrentHashMap<>();

  @Override
  public void accept(ElementMesh mesh) {
    PageBody body = PageBody.of(triangles(mesh));
    List<LocalMesh> kept =
        body.meshes().stream().map(m -> meshes.computeIfAbsent(m, same -> same)).toList();
    bodies.put(mesh.id(), new PageBody(body.frame(), kept));
  }

  /** The body of an element, where it has one. */
  Optional<PageBody> of(ElementId id) {
    return Optional.ofNullable(bodies.get(id));
  }

  private static PageMesh triangles(ElementMesh mesh) {
    int[] corners = new int[3 * mesh.coated().length];
    byte[] states = new byte[mesh.coated().length];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = i;
    }
    for (int i = 0; i < states.length; i++) {
      states[i] = (byte) (mesh.coated()[i] ? 0 : 1);
    }
    return new PageMesh(mesh.frame(), mesh.points(), corners, states);
  }
}
