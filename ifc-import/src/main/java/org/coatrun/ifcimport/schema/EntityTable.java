package org.coatrun.ifcimport.schema;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads the text table of entities. Its names are interned, as are those that the program asks by
 * and those of a file: no comparison is made more often, and the same ones are told at a glance.
 */
final class EntityTable {

  private static final Pattern LINE =
      Pattern.compile("(\\w+)(?: < (\\w+))?(?: :((?: \\w+)+))?(?: @((?: \\w+)+))?");

  private final SchemaVersion version;
  private final Map<String, Row> rows = new HashMap<>();
  private final Map<String, EntityType> types = new HashMap<>();

  /** One line; no schemas stand for all. */
  private record Row(String name, String supertype, List<String> attributes, List<String> schemas) {

    boolean isIn(SchemaVersion version) {
      return schemas.isEmpty() || schemas.contains(version.name());
    }
  }

  private EntityTable(SchemaVersion version) {
    this.version = version;
  }

  /** Of each schema the entities by their names in upper case. */
  static Map<SchemaVersion, Map<String, EntityType>> read() {
    List<Row> rows = rows();
    var tables = new EnumMap<SchemaVersion, Map<String, EntityType>>(SchemaVersion.class);
    for (SchemaVersion version : SchemaVersion.values()) {
      var table = new EntityTable(version);
      rows.stream().filter(r -> r.isIn(version)).forEach(table::add);
      table.rows.keySet().forEach(table::type);
      tables.put(version, table.types);
    }
    return tables;
  }

  private static List<Row> rows() {
    try (var reader =
        new BufferedReader(
            new InputStreamReader(
                EntityTable.class.getResourceAsStream("entities.txt"), StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(l -> !l.isBlank() && l.charAt(0) != '#')
          .map(EntityTable::row)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Row row(String line) {
    Matcher m = LINE.matcher(line);
    if (!m.matches()) {
      throw new IllegalStateException("unreadable line in the table of entities: " + line);
    }
    return new Row(m.group(1).intern(), m.group(2), words(m.group(3)), words(m.group(4)));
  }

  private void add(Row row) {
    if (rows.put(row.name.toUpperCase(Locale.ROOT).intern(), row) != null) {
      throw new IllegalStateException(row.name + " stands twice in the table for " + version);
    }
  }

  private static List<String> words(String text) {
    return text == null
        ? List.of()
        : Stream.of(text.trim().split(" ")).map(String::intern).toList();
  }

  private EntityType type(String upperName) {
    EntityType known = types.get(upperName);
    if (known != null) {
      return known;
    }
    Row row = rows.get(upperName);
    if (row == null) {
      throw new IllegalStateException(upperName + " is no entity of " + version);
    }
    Optional<EntityType> supertype =
        Optional.ofNullable(row.supertype).map(s -> type(s.toUpperCase(Locale.ROOT)));
    var type = new EntityType(row.name, supertype, row.attributes);
    types.put(upperName, type);
    return type;
  }
}
