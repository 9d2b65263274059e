package org.coatrun.shared.model;

import java.util.List;

/** A wall; its substance tells whether it stands before the steel is sprayed. */
public record Wall(
    Identity identity,
    Classification classification,
    List<Material> materials,
    Properties properties,
    Body body)
    implements Element {

  public Wall {
    materials = List.copyOf(materials);
  }
}
