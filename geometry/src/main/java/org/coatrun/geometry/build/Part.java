package org.coatrun.geometry.build;

import org.coatrun.geometry.solid.Solid;

/**
 * One solid of a body.
 *
 * @param fullness true volume over the volume that its flat faces enclose
 */
public record Part(Solid solid, double fullness) {

  /** True volume in m³; of an open solid zero. */
  public double volume() {
    return solid.closed() ? solid.volume() * fullness : 0;
  }
}
