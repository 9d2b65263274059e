package org.coatrun.shared.model;

import java.util.Optional;

/**
 * By what an element is known.
 *
 * @param sourceClass the class in the model, as its schema spells it
 * @param name as the model gives it, or empty
 * @param mark the piece mark or tag, or empty
 * @param typeName name of its type, or empty
 * @param storey where the model puts it, itself or through its assembly
 * @param assembly the whole that it is a part of
 */
public record Identity(
    ElementId id,
    String guid,
    String sourceClass,
    String name,
    String mark,
    String typeName,
    Optional<ElementId> storey,
    Optional<ElementId> assembly) {

  /** An identity with no more than a number and a name: for tests and derived elements. */
  public static Identity of(long step, String name) {
    return new Identity(
        new ElementId(0, step), "", "", name, "", "", Optional.empty(), Optional.empty());
  }
}
