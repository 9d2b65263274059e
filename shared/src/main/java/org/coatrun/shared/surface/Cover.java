package org.coatrun.shared.surface;

import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.units.Area;

/**
 * How much of an element another one covers.
 *
 * @param kind in contact, or encased
 */
public record Cover(ElementId by, Kind kind, Area area) {

  /** Ways to be covered. */
  public enum Kind {
    /** Face against face. */
    CONTACT,
    /** Inside the other's body, or the bore of its hollow section. */
    ENCASED
  }
}
