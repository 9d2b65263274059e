package org.coatrun.geometry.exposure;

import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.Remainder;

/**
 * A patch and what neighbours leave of it.
 *
 * @param use what the patch is for the ledger where nothing covers it
 * @param rest what nothing covers, and what neighbours cover, in the patch's own axes
 * @param restArea area of what nothing covers, at true stretch, m²
 */
public record CoveredPatch(Patch patch, Use use, Remainder rest, double restArea) {

  /** What an uncovered patch counts as. */
  public enum Use {
    /** Hollow interior. */
    INSIDE,
    /** End of a member. */
    END,
    /** Must be coated if the member must be. */
    SIDE
  }
}
