package org.coatrun.cli.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import org.coatrun.geometry.view.ElementMesh;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.shape.Transform3;

/**
 * Bodies for the page, taken while they are measured, by any number of threads. Like ones are made
 * and kept once, so that a large building that repeats itself takes little time and room; each when
 * it is asked for, or beside other work.
 */
public final class PageBodies implements Consumer<ElementMesh> {

  private final Map<ElementMesh.Look, Picture> looks = new ConcurrentHashMap<>();
  private final Map<LocalMesh, LocalMesh> known = new ConcurrentHashMap<>();
  private final Map<ElementId, Placed> bodies = new ConcurrentHashMap<>();

  @Override
  public void accept(ElementMesh mesh) {
    Picture picture = looks.computeIfAbsent(mesh.look(), Picture::new);
    bodies.put(mesh.id(), new Placed(mesh.frame(), picture));
  }

  /** Begins to make them all while the caller goes on. */
  public void begin() {
    Thread drawing = new Thread(() -> looks.values().forEach(Picture::body), "drawing");
    drawing.setDaemon(true);
    // Whoever asks for a body that could not be made meets the failure again.
    drawing.setUncaughtExceptionHandler((thread, failure) -> {});
    drawing.start();
  }

  /** Whether an element has a body. */
  boolean has(ElementId id) {
    return bodies.containsKey(id);
  }

  /** The body of an element, where it has one. */
  Optional<PageBody> of(ElementId id) {
    return Optional.ofNullable(bodies.get(id)).map(b -> b.picture().body().in(b.frame()));
  }

  private record Placed(Transform3 frame, Picture picture) {}

  /** The body of all that look alike, in the frame of each. */
  private final class Picture {

    private final ElementMesh.Look look;
    private PageBody body;

    private Picture(ElementMesh.Look look) {
      this.look = look;
    }

    private synchronized PageBody body() {
      if (body == null) {
        PageBody drawn = PageBody.of(Transform3.translation(look.at()), look.facets());
        List<LocalMesh> meshes =
            drawn.meshes().stream().map(m -> known.computeIfAbsent(m, same -> same)).toList();
        body = new PageBody(drawn.frame(), meshes);
      }
      return body;
    }
  }
}
