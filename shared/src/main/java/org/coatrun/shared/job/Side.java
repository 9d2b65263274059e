package org.coatrun.shared.job;

/** A side of the building in the axes of the model: north is +y. */
public enum Side {
  /** Towards +y. */
  NORTH,
  /** Towards +x. */
  EAST,
  /** Towards -y. */
  SOUTH,
  /** Towards -x. */
  WEST
}
