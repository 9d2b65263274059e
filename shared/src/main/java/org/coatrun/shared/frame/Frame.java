package org.coatrun.shared.frame;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.coatrun.shared.model.ElementId;

/**
 * The frame of a building: every steel member's class, what meets what, and what stands twice.
 *
 * @param members by element, sorted
 * @param connections sorted by member, then support
 * @param doubles sorted by the doubled element
 */
public record Frame(
    SortedMap<ElementId, FrameMember> members,
    List<Connection> connections,
    List<Doubled> doubles) {

  public Frame {
    members = Collections.unmodifiableSortedMap(new TreeMap<>(members));
    connections = List.copyOf(connections);
    doubles = List.copyOf(doubles);
  }

  /** From one verdict for each piece of steel, in any order. */
  public static Frame of(
      List<FrameMember> members, List<Connection> connections, List<Doubled> doubles) {
    SortedMap<ElementId, FrameMember> byElement = new TreeMap<>();
    members.forEach(m -> byElement.put(m.id(), m));
    return new Frame(byElement, connections, doubles);
  }

  /** A frame of nothing: for models without steel. */
  public static Frame empty() {
    return of(List.of(), List.of(), List.of());
  }

  public Optional<FrameMember> member(ElementId id) {
    return Optional.ofNullable(members.get(id));
  }
}
