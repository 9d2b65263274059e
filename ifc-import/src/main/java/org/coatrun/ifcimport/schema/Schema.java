package org.coatrun.ifcimport.schema;

import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The entities of one schema that matter here, with the positions of their attributes.
 *
 * <p>An entity that the schema does not define but a neighbour does is read by the neighbour's
 * definition: exporters mix them.
 */
public final class Schema {

  private static final Map<SchemaVersion, Schema> SCHEMAS = load();
  private static final Set<String> NAMES = EntityNames.read();

  private final SchemaVersion version;
  private final Map<String, EntityType> own;
  private final Map<String, EntityType> all;

  /** The same as {@code all}, quicker to ask. */
  private final Map<String, Optional<EntityType>> byName = new HashMap<>();

  private Schema(SchemaVersion version, Map<String, EntityType> own, Map<String, EntityType> all) {
    this.version = version;
    this.own = own;
    this.all = all;
    all.forEach((name, type) -> byName.put(name, Optional.of(type)));
  }

  /** The table of a schema. */
  public static Schema of(SchemaVersion version) {
    return SCHEMAS.get(version);
  }

  public SchemaVersion version() {
    return version;
  }

  /** The entity of that name, whatever its case; empty where no schema here defines it. */
  public Optional<EntityType> type(String name) {
    Optional<EntityType> asWritten = byName.get(name);
    return asWritten != null
        ? asWritten
        : Optional.ofNullable(all.get(name.toUpperCase(Locale.ROOT)));
  }

  /** Whether this very schema defines the entity, not only a neighbour. */
  public boolean defines(String name) {
    return own.containsKey(name.toUpperCase(Locale.ROOT));
  }

  /**
   * Whether any of the three schemas defines an entity of that name in upper case, also one that is
   * of no use here and has no table.
   */
  public static boolean isStandard(String upperCaseName) {
    return NAMES.contains(upperCaseName);
  }

  /** The named entity and all its subtypes in upper case, as a file names them; sorted. */
  public List<String> kindsOf(String name) {
    return all.entrySet().stream()
        .filter(e -> e.getValue().isA(name))
        .map(Map.Entry::getKey)
        .toList();
  }

  private static Map<SchemaVersion, Schema> load() {
    Map<SchemaVersion, Map<String, EntityType>> own = EntityTable.read();
    var schemas = new EnumMap<SchemaVersion, Schema>(SchemaVersion.class);
    for (SchemaVersion version : SchemaVersion.values()) {
      var all = new TreeMap<String, EntityType>(own.get(version));
      neighbours(version).forEach(n -> own.get(n).forEach(all::putIfAbsent));
      schemas.put(version, new Schema(version, own.get(version), Collections.unmodifiableMap(all)));
    }
    return schemas;
  }

  private static List<SchemaVersion> neighbours(SchemaVersion version) {
    return switch (version) {
      case IFC2X3 -> List.of(SchemaVersion.IFC4, SchemaVersion.IFC4X3);
      case IFC4 -> List.of(SchemaVersion.IFC4X3, SchemaVersion.IFC2X3);
      case IFC4X3 -> List.of(SchemaVersion.IFC4, SchemaVersion.IFC2X3);
    };
  }
}
