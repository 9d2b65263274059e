package org.coatrun.shared.frame;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.coatrun.shared.model.ElementId;

/** The frame of a building: every steel member's class, what meets what, and what stands twice. */
public final class Frame {

  private final Map<ElementId, FrameMember> members = new TreeMap<>();
  private final List<Connection> connections;
  private final List<Doubled> doubles;

  /**
   * @param members one for each piece of steel
   * @param connections sorted by member, then support
   * @param doubles sorted by the doubled element
   */
  public Frame(List<FrameMember> members, List<Connection> connections, List<Doubled> doubles) {
    members.forEach(m -> this.members.put(m.id(), m));
    this.connections = List.copyOf(connections);
    this.doubles = List.copyOf(doubles);
  }

  /** A frame of nothing: for models without steel. */
  public static Frame empty() {
    return new Frame(List.of(), List.of(), List.of());
  }

  public Optional<FrameMember> member(ElementId id) {
    return Optional.ofNullable(members.get(id));
  }

  /** All members, sorted by element. */
  public List<FrameMember> members() {
    return List.copyOf(members.values());
  }

  public List<Connection> connections() {
    return connections;
  }

  public List<Doubled> doubles() {
    return doubles;
  }
}
