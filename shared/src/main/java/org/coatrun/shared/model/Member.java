package org.coatrun.shared.model;

import java.util.List;

/**
 * A beam, column, member or plate of the model, whatever it is made of, or another element found to
 * be steel.
 */
public record Member(
    Identity identity,
    Role role,
    SectionName section,
    Classification classification,
    List<Material> materials,
    Properties properties,
    Body body)
    implements Element {

  public Member {
    materials = List.copyOf(materials);
  }
}
