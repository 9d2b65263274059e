package org.coatrun.cli.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import org.coatrun.geometry.view.ElementMesh;
import org.coatrun.geometry.view.Triangles;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.shape.Transform3;

/**
 * Bodies for the page, taken while they are measured, by any number of threads. Like ones are made
 * and kept once, so that a large building that repeats itself takes little time and room; each when
 * it is asked for, or beside other work.
 */
public final class PageBodies implements Consumer<ElementMesh> {

  private final Map<ElementMesh.Look, Meshes> looks = new ConcurrentHashMap<>();
  private final Map<LocalMesh, LocalMesh> known = new ConcurrentHashMap<>();
  private final Map<ElementId, Placed> bodies = new ConcurrentHashMap<>();

  @Override
  public void accept(ElementMesh mesh) {
    Meshes meshes = looks.computeIfAbsent(mesh.look(), look -> new Meshes(mesh));
    bodies.put(mesh.id(), new Placed(mesh.frame(), meshes));
  }

  /** Begins to make them all while the caller goes on. */
  public void begin() {
    Thread drawing = new Thread(() -> looks.values().forEach(Meshes::all), "drawing");
    drawing.setDaemon(true);
    // Whoever asks for a body that could not be made meets the failure again.
    drawing.setUncaughtExceptionHandler((thread, failure) -> {});
    drawing.start();
  }

  /** The body of an element, where it has one. */
  Optional<PageBody> of(ElementId id) {
    return Optional.ofNullable(bodies.get(id)).map(b -> new PageBody(b.frame(), b.meshes().all()));
  }

  private record Placed(Transform3 frame, Meshes meshes) {}

  /** The meshes of all that look alike. */
  private final class Meshes {

    private ElementMesh first;
    private List<LocalMesh> made;

    private Meshes(ElementMesh first) {
      this.first = first;
    }

    private synchronized List<LocalMesh> all() {
      if (made == null) {
        made =
            PageBody.of(first.frame(), triangles(first.look())).meshes().stream()
                .map(m -> known.computeIfAbsent(m, same -> same))
                .toList();
        first = null;
      }
      return made;
    }
  }

  private static PageMesh triangles(ElementMesh.Look look) {
    Triangles all = look.triangles();
    byte[] states = new byte[all.coated().length];
    for (int i = 0; i < states.length; i++) {
      states[i] = (byte) (all.coated()[i] ? 0 : 1);
    }
    return new PageMesh(all.points(), all.corners(), states);
  }
}
