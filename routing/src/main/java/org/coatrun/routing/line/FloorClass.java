package org.coatrun.routing.line;

import java.util.List;

/**
 * Floors that are one to the choice of outlets: the same ways, the same work, the same flexible
 * hose up to there.
 *
 * @param floors indices of the floors, ascending
 * @param outlets that each of them may have
 * @param cells for each floor, in the same order, the plan's cells on it
 */
record FloorClass(List<Integer> floors, FloorOutlets outlets, List<List<Integer>> cells) {

  /** The floor that stands for all. */
  int first() {
    return floors.get(0);
  }
}
