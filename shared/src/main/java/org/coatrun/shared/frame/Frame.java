package org.coatrun.shared.frame;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.shared.model.ElementId;

/**
 * The frame of a building: every steel member's class, what meets what, and what stands twice.
 *
 * @param members by element, sorted
 * @param connections sorted by member, then support
 * @param doubles sorted by the doubled element
 */
public record Frame(
    Map<ElementId, FrameMember> members, List<Connection> connections, List<Doubled> doubles) {

  public Frame {
    members = ElementId.sorted(members);
    connections = List.copyOf(connections);
    doubles = List.copyOf(doubles);
  }

  /** From one verdict for each piece of steel, in any order. */
  public static Frame of(
      List<FrameMember> members, List<Connection> connections, List<Doubled> doubles) {
    Map<ElementId, FrameMember> byElement = new LinkedHashMap<>();
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
