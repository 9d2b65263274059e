package org.coatrun.geometry.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.coatrun.shared.frame.Connection;
import org.coatrun.shared.model.ElementId;

/**
 * What meets what as a directed graph: an edge runs from the member that ends somewhere to the one
 * it meets.
 */
final class FrameGraph {

  private final Map<ElementId, FramePiece> pieces = new LinkedHashMap<>();
  private final Map<ElementId, List<Connection>> out = new HashMap<>();
  private final Map<ElementId, List<Connection>> in = new HashMap<>();

  /**
   * @param pieces sorted
   * @param connections of these pieces, sorted by member, then support
   */
  FrameGraph(List<FramePiece> pieces, List<Connection> connections) {
    pieces.forEach(p -> this.pieces.put(p.id(), p));
    for (Connection c : connections) {
      out.computeIfAbsent(c.member(), k -> new ArrayList<>()).add(c);
      in.computeIfAbsent(c.support(), k -> new ArrayList<>()).add(c);
    }
  }

  FramePiece piece(ElementId id) {
    return pieces.get(id);
  }

  /** What the member itself meets, in order of support. */
  List<Connection> supportsOf(ElementId member) {
    return out.getOrDefault(member, List.of());
  }

  /** What meets the member, in order of member. */
  List<Connection> carriedBy(ElementId support) {
    return in.getOrDefault(support, List.of());
  }

  /** The first connection that a piece has with a column, whichever way it runs. */
  Optional<Connection> toColumn(ElementId id) {
    return supportsOf(id).stream()
        .filter(c -> pieces.get(c.support()).isColumn())
        .findFirst()
        .or(
            () ->
                carriedBy(id).stream().filter(c -> pieces.get(c.member()).isColumn()).findFirst());
  }

  /**
   * Elements of trusses: assemblies with slanting web members, and pairs of chords that at least
   * four webs join, three of them slanting.
   *
   * @return for each element of a truss, all elements of it
   */
  Map<ElementId, Set<ElementId>> trusses() {
    Map<ElementId, Set<ElementId>> trusses = new TreeMap<>();
    assemblies().values().stream()
        .filter(this::isTruss)
        .forEach(group -> group.forEach(id -> trusses.put(id, group)));
    websByChords().values().stream().filter(this::areWebs).forEach(webs -> addTruss(webs, trusses));
    return trusses;
  }

  private Map<ElementId, Set<ElementId>> assemblies() {
    Map<ElementId, Set<ElementId>> groups = new TreeMap<>();
    for (FramePiece p : pieces.values()) {
      p.assembly().ifPresent(a -> groups.computeIfAbsent(a, k -> new TreeSet<>()).add(p.id()));
    }
    return groups;
  }

  private boolean isTruss(Set<ElementId> group) {
    long slanting = group.stream().map(pieces::get).filter(this::slants).count();
    long lying = group.stream().map(pieces::get).filter(p -> !p.isPlate() && p.lies()).count();
    return slanting >= 3 && lying >= 2;
  }

  private boolean slants(FramePiece p) {
    return !p.isPlate() && !p.lies() && p.box().uprightness() < 0.99;
  }

  private Map<List<ElementId>, List<ElementId>> websByChords() {
    Map<List<ElementId>, List<ElementId>> webs =
        new TreeMap<>(
            Comparator.comparing((List<ElementId> l) -> l.get(0)).thenComparing(l -> l.get(1)));
    for (FramePiece p : pieces.values()) {
      if (p.isPlate() || p.isColumn() || p.lies()) {
        continue;
      }
      List<ElementId> chords =
          supportsOf(p.id()).stream()
              .map(Connection::support)
              .filter(s -> pieces.get(s).lies())
              .distinct()
              .sorted()
              .toList();
      if (chords.size() == 2) {
        webs.computeIfAbsent(chords, k -> new ArrayList<>()).add(p.id());
      }
    }
    return webs;
  }

  private boolean areWebs(List<ElementId> webs) {
    return webs.size() >= 4 && webs.stream().map(pieces::get).filter(this::slants).count() >= 3;
  }

  private void addTruss(List<ElementId> webs, Map<ElementId, Set<ElementId>> trusses) {
    if (trusses.containsKey(webs.get(0))) {
      return;
    }
    Set<ElementId> group = new TreeSet<>(webs);
    supportsOf(webs.get(0)).forEach(c -> group.add(c.support()));
    group.forEach(id -> trusses.put(id, group));
  }
}
