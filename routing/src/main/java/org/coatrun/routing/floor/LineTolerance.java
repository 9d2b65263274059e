package org.coatrun.routing.floor;

/** What counts as the same level. */
final class LineTolerance {

  /** A base plate sunk this deep in a slab still stands on it, in metres. */
  static final double LEVEL = 0.05;

  /** Pockets for base plates reach this far under the top of the lowest floor, in metres. */
  static final double POCKET = 0.6;

  private LineTolerance() {}
}
