package org.coatrun.cli.page;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.coatrun.shared.estimate.Line;
import org.coatrun.shared.estimate.Quantities;
import org.coatrun.shared.estimate.Status;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;

/**
 * What of a building stands on the page one by one: all of it within the limits, else what matters
 * most. Of members and decks those come first that are unresolved, then those with the largest
 * exposed area; of slabs and walls the largest.
 */
final class PageShare {

  private final Takeoff takeoff;
  private final PageBodies bodies;
  private final List<Line> lines;
  private final List<Element> around;
  private final List<Finding> findings;
  private final Set<ElementId> shown = new LinkedHashSet<>();
  private final PlainShapes shapes;

  PageShare(Takeoff takeoff, PageBodies bodies, PageLimits limits) {
    this.takeoff = takeoff;
    this.bodies = bodies;
    lines = relevant(allLines(takeoff), limits.elements());
    around = largest(surroundings(takeoff), limits.surroundings());
    findings = worst(takeoff.findings(), limits.findings());
    Stream.concat(lines.stream().map(l -> l.identity().id()), around.stream().map(Element::id))
        .sorted()
        .forEach(shown::add);
    List<PageBody> drawn = shown().flatMap(id -> bodies.of(id).stream()).toList();
    shapes = new PlainShapes(drawn, limits.triangles());
  }

  /** What has a row of its own, in the order of the elements. */
  Stream<ElementId> shown() {
    return shown.stream();
  }

  /** Whether an element has a row of its own. */
  boolean shows(ElementId id) {
    return shown.contains(id);
  }

  /** The body of an element as it is drawn; empty where it has none. */
  Optional<PageBody> body(ElementId id) {
    return bodies.of(id).map(shapes::drawn);
  }

  /** Whether an element has a body. */
  boolean hasBody(ElementId id) {
    return bodies.has(id);
  }

  /** The findings of the list. */
  List<Finding> findings() {
    return findings;
  }

  /** What the page lacks, in sentences; empty where it lacks nothing. */
  List<String> lacks() {
    long plain =
        shown.stream().flatMap(id -> bodies.of(id).stream()).filter(shapes::isPlain).count();
    return new ShareWords(takeoff)
        .sentences(lines, around.size(), surroundings(takeoff).size(), plain, findings.size());
  }

  private static List<Line> allLines(Takeoff takeoff) {
    return Stream.<Collection<? extends Line>>of(takeoff.members(), takeoff.decks())
        .<Line>flatMap(Collection::stream)
        .toList();
  }

  private static List<Line> relevant(List<Line> all, int most) {
    if (all.size() <= most) {
      return all;
    }
    List<Line> kept =
        all.stream()
            .filter(l -> l.outcome().status() != Status.LEFT_OUT)
            .sorted(Comparator.comparingDouble(PageShare::weight).reversed())
            .toList();
    return kept.size() <= most ? kept : kept.subList(0, beforeLikeOnes(kept, most));
  }

  /** Like members are kept or left together where that leaves at least half of the room used. */
  private static int beforeLikeOnes(List<Line> sorted, int most) {
    int to = most;
    while (to > most / 2 && weight(sorted.get(to - 1)) <= weight(sorted.get(most))) {
      to--;
    }
    return to > most / 2 ? to : most;
  }

  /** Exposed area on steps of 0.001 m², so that like members weigh the same. */
  private static double weight(Line line) {
    return line.outcome()
        .quantities()
        .map(Quantities::ledger)
        .map(l -> Math.rint(l.exposed().squareMetres() * 1000))
        .orElse(Double.MAX_VALUE);
  }

  private static List<Element> surroundings(Takeoff takeoff) {
    return Stream.<Collection<? extends Element>>of(
            takeoff.building().slabs(), takeoff.building().walls())
        .<Element>flatMap(Collection::stream)
        .toList();
  }

  private List<Element> largest(List<Element> all, int most) {
    return all.size() <= most
        ? all
        : all.stream()
            .sorted(Comparator.comparingDouble(this::size).reversed())
            .limit(most)
            .toList();
  }

  private double size(Element element) {
    return bodies
        .of(element.id())
        .map(b -> b.meshes().stream().mapToDouble(LocalMesh::boxArea).sum())
        .orElse(0.0);
  }

  private static List<Finding> worst(List<Finding> all, int most) {
    if (all.size() <= most) {
      return all;
    }
    List<Finding> sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparing((Finding f) -> f.code().severity()).reversed());
    return sorted.subList(0, most);
  }
}
