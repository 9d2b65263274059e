package org.coatrun.cli.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import org.coatrun.geometry.view.ElementMesh;
import org.coatrun.shared.model.ElementId;

/**
 * Bodies for the page, taken while they are measured, by any number of threads. Like ones are made
 * and kept once, so that a large building that repeats itself takes little time and room.
 */
public final class PageBodies implements Consumer<ElementMesh> {

  private final Map<ElementMesh.Look, List<LocalMesh>> looks = new ConcurrentHashMap<>();
  private final Map<LocalMesh, LocalMesh> meshes = new ConcurrentHashMap<>();
  private final Map<ElementId, PageBody> bodies = new ConcurrentHashMap<>();

  @Override
  public void accept(ElementMesh mesh) {
    List<LocalMesh> look = looks.get(mesh.look());
    if (look == null) {
      look = PageBody.of(mesh.frame(), triangles(mesh.look())).meshes();
      look = look.stream().map(m -> meshes.computeIfAbsent(m, same -> same)).toList();
      looks.put(mesh.look(), look);
    }
    bodies.put(mesh.id(), new PageBody(mesh.frame(), look));
  }

  /** The body of an element, where it has one. */
  Optional<PageBody> of(ElementId id) {
    return Optional.ofNullable(bodies.get(id));
  }

  private static PageMesh triangles(ElementMesh.Look look) {
    boolean[] coated = look.form().coated();
    int[] corners = new int[3 * coated.length];
    byte[] states = new byte[coated.length];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = i;
    }
    for (int i = 0; i < states.length; i++) {
      states[i] = (byte) (coated[i] ? 0 : 1);
    }
    return new PageMesh(look.points(), corners, states);
  }
}
