package org.coatrun.shared.model;

import java.util.Optional;
import org.coatrun.shared.units.LinearDensity;

/**
 * A steel section's designation found in a text: {@code W12X26}, {@code HEA200}, {@code
 * UB305X165X40}.
 *
 * @param family the shape that it names
 * @param text the designation without blanks, in upper case, with X between its numbers
 * @param nominalWeight the weight for its length, where the designation states one
 */
public record SectionDesignation(
    Family family, String text, Optional<LinearDensity> nominalWeight) {

  /** The shapes that designations name. */
  public enum Family {
    I_SHAPE,
    TEE,
    CHANNEL,
    ANGLE,
    ZED,
    HOLLOW,
    ROUND_HOLLOW,
    FLAT,
    ROUND_BAR,
    JOIST
  }

  /**
   * The first designation in the text, by the forms of US, European, British, Australian and
   * Japanese section tables; empty where there is none.
   */
  public static Optional<SectionDesignation> find(String text) {
    return DesignationForms.find(text);
  }
}
