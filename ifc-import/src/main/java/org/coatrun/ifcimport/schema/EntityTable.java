package org.coatrun.ifcimport.schema;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the text table of entities for one schema. */
final class EntityTable {

  private static final Pattern LINE =
      Pattern.compile("(\\w+)(?: < (\\w+))?(?: :((?: \\w+)+))?(?: @((?: \\w+)+))?");

  private final SchemaVersion version;
  private final Map<String, Row> rows = new HashMap<>();
  private final Map<String, EntityType> types = new HashMap<>();

  private record Row(String name, String supertype, List<String> attributes) {}

  private EntityTable(SchemaVersion version) {
    this.version = version;
  }

  /** Entities by their names in upper case. */
  static Map<String, EntityType> read(SchemaVersion version) {
    var table = new EntityTable(version);
    table.readRows();
    table.rows.keySet().forEach(table::type);
    return table.types;
  }

  private void readRows() {
    try (var reader =
        new BufferedReader(
            new InputStreamReader(
                EntityTable.class.getResourceAsStream("entities.txt"), StandardCharsets.UTF_8))) {
      reader.lines().filter(l -> !l.isBlank() && l.charAt(0) != '#').forEach(this::readRow);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void readRow(String line) {
    Matcher m = LINE.matcher(line);
    if (!m.matches()) {
      throw new IllegalStateException("unreadable line in the table of entities: " + line);
    }
    if (m.group(4) != null && !words(m.group(4)).contains(version.name())) {
      return;
    }
    var row = new Row(m.group(1), m.group(2), words(m.group(3)));
    if (rows.put(row.name.toUpperCase(Locale.ROOT), row) != null) {
      throw new IllegalStateException(row.name + " stands twice in the table for " + version);
    }
  }

  private static List<String> words(String text) {
    return text == null ? List.of() : List.of(text.trim().split(" "));
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
