package org.coatrun.ifcimport.schema;

import java.util.Locale;
import java.util.Optional;

/** The three schemas that have a table of their own; every other one is read by the nearest. */
public enum SchemaVersion {
  IFC2X3,
  IFC4,
  IFC4X3;

  /**
   * The table that serves a schema named in a file's header, whatever its case and whatever stands
   * after the base name: 2.0 and 2.2 are read as 2X3, 4.1 as IFC4, 4.2 and the release candidates
   * of 4.3 as IFC4X3.
   *
   * @return empty where the name is no schema of IFC that is known
   */
  public static Optional<SchemaVersion> nearest(String schemaName) {
    String name = schemaName.trim().toUpperCase(Locale.ROOT);
    if (matches(name, "IFC2X_?\\d?|IFC20|IFC2\\.0")) {
      return Optional.of(IFC2X3);
    }
    if (matches(name, "IFC4X[23]|IFC4X4")) {
      return Optional.of(IFC4X3);
    }
    return matches(name, "IFC4|IFC4X1") ? Optional.of(IFC4) : Optional.empty();
  }

  private static boolean matches(String name, String base) {
    return name.matches("(" + base + ")(_(ADD|TC|RC|FINAL|DRAFT|PLATFORM)\\w*)?");
  }
}
