package org.coatrun.shared.model;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What property and quantity sets say of an element, its type included; looked up when asked. */
public interface Properties {

  /** The value of a property by its name, whatever set it stands in, as text. */
  Optional<String> text(String name);

  /** The values of those of some properties that there are, by their names as asked for. */
  default Map<String, String> texts(List<String> names) {
    Map<String, String> found = new HashMap<>();
    names.forEach(name -> text(name).ifPresent(value -> found.put(name, value)));
    return found;
  }

  /**
   * The value of a quantity by its name in SI units; empty where it is missing or contradicts
   * itself.
   */
  OptionalDouble quantity(String name);

  /** Nothing known. */
  static Properties none() {
    return of(Map.of(), Map.of());
  }

  /** Properties known in full. */
  static Properties of(Map<String, String> texts, Map<String, Double> quantities) {
    return new Properties() {
      @Override
      public Optional<String> text(String name) {
        return Optional.ofNullable(texts.get(name));
      }

      @Override
      public OptionalDouble quantity(String name) {
        Double value = quantities.get(name);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
      }
    };
  }
}
