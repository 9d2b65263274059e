package org.coatrun.ifcimport.shape;

import org.coatrun.shared.shape.Vec3;

/**
 * What is taken off all placements of a building. Chosen once, after all files are open and before
 * the first body is asked for.
 */
public final class Origin {

  private volatile Vec3 chosen = Vec3.ZERO;

  public Vec3 chosen() {
    return chosen;
  }

  public void choose(Vec3 origin) {
    chosen = origin;
  }
}
