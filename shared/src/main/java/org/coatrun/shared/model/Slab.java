package org.coatrun.shared.model;

import java.util.List;

/** A slab that is not deck. */
public record Slab(
    Identity identity, Kind kind, List<Material> materials, Properties properties, Body body)
    implements Element {

  /** What a slab is for. */
  public enum Kind {
    FLOOR,
    ROOF,
    LANDING,
    BASE
  }

  public Slab {
    materials = List.copyOf(materials);
  }
}
