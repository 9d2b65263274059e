package org.coatrun.shared.model;

import java.util.List;

/**
 * What an element was taken for, and why.
 *
 * @param evidence the reasons, weightiest first; empty where nothing says anything
 */
public record Classification(Substance substance, List<Evidence> evidence) {

  public Classification {
    evidence = List.copyOf(evidence);
  }

  public boolean isSteel() {
    return substance == Substance.STEEL;
  }
}
