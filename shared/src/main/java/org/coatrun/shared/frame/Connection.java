package org.coatrun.shared.frame;

import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.units.Length;

/**
 * One member meeting another.
 *
 * @param member the one that ends, or passes, there
 * @param support the one it meets
 * @param kind how they meet
 * @param at where along the first, in words
 * @param gap clear distance between the boxes of the two, zero where they touch or overlap
 */
public record Connection(ElementId member, ElementId support, Kind kind, String at, Length gap) {

  /** Ways to meet. */
  public enum Kind {
    /** Its end meets the other's side. */
    FRAMES_INTO,
    /** A column's foot on another column's head. */
    STACKED_ON,
    /** A column's foot on a beam, or a beam over a column's head. */
    BEARS_ON,
    /** End to end with a member that goes on in the same line. */
    SPLICED_TO,
    /** It runs past and touches. */
    PASSES,
    /** A plate on a member. */
    TOUCHES
  }
}
