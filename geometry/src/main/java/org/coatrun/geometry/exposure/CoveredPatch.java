package org.coatrun.geometry.exposure;

import java.util.List;
import org.coatrun.geometry.solid.Patch;
import org.locationtech.jts.geom.Geometry;

/**
 * A patch and what neighbours leave of it.
 *
 * @param use what the patch is for the ledger where nothing covers it
 * @param rest what nothing covers, in the patch's own axes
 * @param restArea its area at true stretch, m²
 * @param shades what neighbours cover, side by side
 */
public record CoveredPatch(
    Patch patch, Use use, Geometry rest, double restArea, List<Geometry> shades) {

  public CoveredPatch {
    shades = List.copyOf(shades);
  }

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
