package org.coatrun.ifcimport.entity;

import java.util.List;
import java.util.Map;

/**
 * What the numbers of a file mean: by how much each kind is multiplied to become SI.
 *
 * @param length metres in one unit of length
 * @param area square metres
 * @param volume cubic metres
 * @param angle radians
 * @param mass kilograms
 * @param lengthName the unit of length in words
 * @param faults what could not be understood, one sentence each; the first has to do with lengths
 *     where {@code lengthKnown} is false
 */
public record Units(
    double length,
    double area,
    double volume,
    double angle,
    double mass,
    String lengthName,
    boolean lengthKnown,
    List<String> faults) {

  /** Everything in SI. */
  public static final Units SI = new Units(1, 1, 1, 1, 1, "metre", true, List.of());

  /** Kinds of physical quantity and the attribute that holds their value. */
  private static final Map<String, String> VALUES =
      Map.of(
          "IfcQuantityLength", "LengthValue",
          "IfcQuantityArea", "AreaValue",
          "IfcQuantityVolume", "VolumeValue",
          "IfcQuantityWeight", "WeightValue",
          "IfcQuantityCount", "CountValue");

  public Units {
    faults = List.copyOf(faults);
  }

  /** Name of the attribute that holds a quantity's value; empty for a kind that has none. */
  public static String valueAttribute(String quantityKind) {
    return VALUES.getOrDefault(quantityKind, "");
  }

  /** By how much a quantity's value is multiplied, where it names no unit of its own. */
  public double ofQuantity(String quantityKind) {
    return switch (quantityKind) {
      case "IfcQuantityLength" -> length;
      case "IfcQuantityArea" -> area;
      case "IfcQuantityVolume" -> volume;
      case "IfcQuantityWeight" -> mass;
      default -> 1;
    };
  }
}
