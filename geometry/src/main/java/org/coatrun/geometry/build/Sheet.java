package org.coatrun.geometry.build;

import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/**
 * How the profile's plane moves through space between two stations of a sweep, exactly; {@code s}
 * runs from 0 to 1. At each s it is an affine map.
 */
interface Sheet {

  /** Where a direction in the profile's plane points. */
  Vec3 direction(Vec2 d, double s);

  /** Derivative by s of the place of a point that stands still in the profile's plane. */
  Vec3 speed(Vec2 p, double s);

  /** Whether points of the profile move on straight lines. */
  boolean straight();
}
