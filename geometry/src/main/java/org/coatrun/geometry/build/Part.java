package org.coatrun.geometry.build;

import org.coatrun.geometry.solid.Solid;
import org.coatrun.geometry.solid.SolidTree;

/**
 * One solid of a body, or solids that cuts and joints make into one.
 *
 * @param fullness true volume over the volume that the flat faces enclose
 */
public record Part(SolidTree tree, double fullness) {

  /** A plain solid. */
  static Part of(Solid solid, double fullness) {
    return new Part(SolidTree.of(solid), fullness);
  }
}
