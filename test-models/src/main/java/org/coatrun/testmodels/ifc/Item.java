package org.coatrun.testmodels.ifc;

import java.util.List;

/**
 * What an element's record says apart from its place and its shape.
 *
 * @param predefined name of the predefined type
 * @param name name of the element
 * @param objectType the exporter's own word, empty for none
 * @param tag mark of the element, empty for none
 * @param numbers sizes in metres that some classes carry: door height and width; risers, treads,
 *     rise and going of a flight; diameter and length of a bar or fastener
 */
public record Item(
    ElementKind kind,
    String predefined,
    String name,
    String objectType,
    String tag,
    List<Double> numbers) {

  /** An element without sizes of its own. */
  public static Item of(ElementKind kind, String predefined, String name, String type, String tag) {
    return new Item(kind, predefined, name, type, tag, List.of());
  }
}
