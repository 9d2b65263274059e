package org.coatrun.ifcimport.schema;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The names of all entities that the three schemas define, those without a table included. */
final class EntityNames {

  private EntityNames() {}

  /** The names in upper case. */
  static Set<String> read() {
    try (var reader =
        new BufferedReader(
            new InputStreamReader(
                EntityNames.class.getResourceAsStream("names.txt"), StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(l -> !l.startsWith("#"))
          .flatMap(l -> Stream.of(l.split(" ")))
          .map(n -> "IFC" + n.toUpperCase(Locale.ROOT))
          .collect(Collectors.toUnmodifiableSet());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
