package org.coatrun.ifcimport.schema;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One entity of a schema: its name, what it is a kind of, and where each of its attributes stands.
 */
public final class EntityType {

  private final String name;
  private final List<String> attributes;
  private final Map<String, Integer> positions = new HashMap<>();

  /** Its own name and those of all that it is a kind of. */
  private final Set<String> kinds = new HashSet<>();

  EntityType(String name, Optional<EntityType> supertype, List<String> added) {
    this.name = name;
    kinds.add(name);
    supertype.ifPresent(s -> kinds.addAll(s.kinds));
    var all = new ArrayList<String>(supertype.map(EntityType::attributes).orElse(List.of()));
    all.addAll(added);
    this.attributes = List.copyOf(all);
    for (int i = 0; i < attributes.size(); i++) {
      positions.put(attributes.get(i), i);
    }
  }

  /** As the standard spells it, such as {@code IfcBeam}. */
  public String name() {
    return name;
  }

  /** The explicit attributes, inherited ones first, in the order in which a file writes them. */
  public List<String> attributes() {
    return attributes;
  }

  /** Where the attribute stands, from 0; −1 where this schema's entity does not have it. */
  public int position(String attribute) {
    return positions.getOrDefault(attribute, -1);
  }

  /** Whether this is the named entity or a subtype of it. */
  public boolean isA(String entityName) {
    return kinds.contains(entityName);
  }

  /** Whether this is one of the named entities or a subtype of one. */
  public boolean isAny(List<String> entityNames) {
    for (String entityName : entityNames) {
      if (isA(entityName)) {
        return true;
      }
    }
    return false;
  }

  @Override
  public String toString() {
    return name;
  }
}
