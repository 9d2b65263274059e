package org.coatrun.shared.surface;

import org.coatrun.shared.units.Area;

/**
 * Where each square metre of an element's faces goes: {@code body = inside + ends + holes + covered
 * + exposed}. The sum is checked when a ledger is made.
 *
 * @param body all faces
 * @param inside faces of a hollow interior, whatever stands in it
 * @param ends cut ends of a sweep, where nothing covers them
 * @param holes walls of holes under the threshold, less the mouths they open; may be negative, so
 *     that the exposed area does not depend on small holes
 * @param covered faces in contact with, or inside, something else or its bore
 * @param exposed what must be coated if the member must be
 */
public record SurfaceLedger(
    Area body, Area inside, Area ends, Area holes, Area covered, Area exposed) {

  private static final double RELATIVE_TOLERANCE = 1e-9;
  private static final double ABSOLUTE_TOLERANCE_M2 = 1e-12;

  /**
   * @throws IllegalArgumentException where the parts do not add up to the body
   */
  public SurfaceLedger {
    double parts =
        inside.squareMetres()
            + ends.squareMetres()
            + holes.squareMetres()
            + covered.squareMetres()
            + exposed.squareMetres();
    double allowed = RELATIVE_TOLERANCE * body.squareMetres() + ABSOLUTE_TOLERANCE_M2;
    if (Math.abs(parts - body.squareMetres()) > allowed) {
      throw new IllegalArgumentException(
          "a ledger that does not add up: body "
              + body.squareMetres()
              + " m2, parts "
              + parts
              + " m2");
    }
  }
}
