package org.coatrun.ifcimport.schema;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

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

  /** Its own, then those of its neighbours. */
  private final List<EntityTable> tables;

  /** The entities that were asked for, by their names in upper case. */
  private final Map<String, Optional<EntityType>> known = new ConcurrentHashMap<>();

  private Schema(SchemaVersion version, List<EntityTable> tables) {
    this.version = version;
    this.tables = tables;
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
    Optional<EntityType> asWritten = known.get(name);
    return asWritten != null ? asWritten : find(name.toUpperCase(Locale.ROOT));
  }

  private Optional<EntityType> find(String name) {
    for (EntityTable table : tables) {
      if (table.has(name)) {
        return known.computeIfAbsent(name, n -> Optional.of(table.type(n)));
      }
    }
    return Optional.empty();
  }

  /** Whether this very schema defines the entity, not only a neighbour. */
  public boolean defines(String name) {
    return tables.get(0).has(name.toUpperCase(Locale.ROOT));
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
    String upper = name.toUpperCase(Locale.ROOT);
    Set<String> kinds = new TreeSet<>();
    for (int i = 0; i < tables.size(); i++) {
      List<EntityTable> before = tables.subList(0, i);
      for (String kind : tables.get(i).kindsOf(upper)) {
        if (before.stream().noneMatch(t -> t.has(kind))) {
          kinds.add(kind);
        }
      }
    }
    return List.copyOf(kinds);
  }

  private static Map<SchemaVersion, Schema> load() {
    Map<SchemaVersion, EntityTable> own = EntityTable.read();
    var schemas = new EnumMap<SchemaVersion, Schema>(SchemaVersion.class);
    for (SchemaVersion version : SchemaVersion.values()) {
      schemas.put(version, new Schema(version, inOrder(version).stream().map(own::get).toList()));
    }
    return schemas;
  }

  /** A schema, and its neighbours from the nearest on. */
  private static List<SchemaVersion> inOrder(SchemaVersion version) {
    return switch (version) {
      case IFC2X3 -> List.of(SchemaVersion.IFC2X3, SchemaVersion.IFC4, SchemaVersion.IFC4X3);
      case IFC4 -> List.of(SchemaVersion.IFC4, SchemaVersion.IFC4X3, SchemaVersion.IFC2X3);
      case IFC4X3 -> List.of(SchemaVersion.IFC4X3, SchemaVersion.IFC4, SchemaVersion.IFC2X3);
    };
  }
}
