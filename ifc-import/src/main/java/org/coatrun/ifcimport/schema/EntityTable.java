package org.coatrun.ifcimport.schema;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * The entities of one schema, from the text table, which its test holds against the standard's own
 * text; each is made when it is asked for, as a file has few of them. Their names are interned, as
 * are those that the program asks by and those of a file: no comparison is made more often, and the
 * same ones are told at a glance. Safe for several threads.
 */
final class EntityTable {

  private final SchemaVersion version;

  /** By their names in upper case, as all maps here. */
  private final Map<String, Row> rows = new HashMap<>();

  private final Map<String, List<String>> subtypes = new HashMap<>();
  private final Map<String, EntityType> types = new ConcurrentHashMap<>();

  /**
   * One line, names with blanks between.
   *
   * @param supertype empty where there is none
   * @param schemas empty for all
   */
  private record Row(String name, String supertype, String attributes, String schemas) {

    /** A line is {@code Name < Supertype : Attribute Attribute @ SCHEMA SCHEMA}. */
    static Row of(String line) {
      String[] schemas = parts(line, " @ ");
      String[] attributes = parts(schemas[0], " : ");
      String[] supertype = parts(attributes[0], " < ");
      return new Row(supertype[0], supertype[1], attributes[1], schemas[1]);
    }

    private static String[] parts(String text, String mark) {
      int at = text.indexOf(mark);
      return at < 0
          ? new String[] {text, ""}
          : new String[] {text.substring(0, at), text.substring(at + mark.length())};
    }

    boolean isIn(SchemaVersion version) {
      return schemas.isEmpty() || words(schemas).anyMatch(version.name()::equals);
    }
  }

  private EntityTable(SchemaVersion version) {
    this.version = version;
  }

  /** One for each schema. */
  static Map<SchemaVersion, EntityTable> read() {
    List<Row> rows = rows();
    var tables = new EnumMap<SchemaVersion, EntityTable>(SchemaVersion.class);
    for (SchemaVersion version : SchemaVersion.values()) {
      var table = new EntityTable(version);
      for (Row row : rows) {
        if (row.isIn(version)) {
          table.add(row);
        }
      }
      tables.put(version, table);
    }
    return tables;
  }

  private static List<Row> rows() {
    try (var reader =
        new BufferedReader(
            new InputStreamReader(
                EntityTable.class.getResourceAsStream("entities.txt"), StandardCharsets.UTF_8))) {
      return reader.lines().filter(l -> !l.isBlank() && l.charAt(0) != '#').map(Row::of).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void add(Row row) {
    String name = upper(row.name);
    if (rows.put(name, row) != null) {
      throw new IllegalStateException(row.name + " stands twice in the table for " + version);
    }
    if (!row.supertype.isEmpty()) {
      subtypes.computeIfAbsent(upper(row.supertype), s -> new ArrayList<>()).add(name);
    }
  }

  /** The names of all entities in upper case. */
  Set<String> names() {
    return Collections.unmodifiableSet(rows.keySet());
  }

  /** Whether the schema defines an entity of that name in upper case. */
  boolean has(String name) {
    return rows.containsKey(name);
  }

  /** The names of an entity and of all its subtypes in upper case; none where there is none. */
  List<String> kindsOf(String name) {
    List<String> kinds = new ArrayList<>();
    if (has(name)) {
      kinds.add(name);
    }
    for (int i = 0; i < kinds.size(); i++) {
      kinds.addAll(subtypes.getOrDefault(kinds.get(i), List.of()));
    }
    return kinds;
  }

  /** The entity of that name in upper case, which there is. */
  EntityType type(String name) {
    EntityType known = types.get(name);
    if (known != null) {
      return known;
    }
    Row row = rows.get(name);
    if (row == null) {
      throw new IllegalStateException(name + " is no entity of " + version);
    }
    Optional<EntityType> supertype =
        row.supertype.isEmpty() ? Optional.empty() : Optional.of(type(upper(row.supertype)));
    List<String> attributes = words(row.attributes).map(String::intern).toList();
    var type = new EntityType(row.name.intern(), supertype, attributes);
    EntityType first = types.putIfAbsent(name, type);
    return first == null ? type : first;
  }

  private static Stream<String> words(String text) {
    return text.isEmpty() ? Stream.empty() : Stream.of(text.split(" "));
  }

  private static String upper(String name) {
    return name.toUpperCase(Locale.ROOT).intern();
  }
}
