package org.coatrun.shared.line;

import java.util.List;
import java.util.Optional;

/**
 * One floor of the plan.
 *
 * @param free where a person and a hose can go
 * @param cells indices into the plan's cells
 * @param setUps in the order of work
 * @param check empty where nothing is sprayed from this floor, or no line leads here
 */
public record FloorPlan(
    FloorOutline outline,
    List<Region> free,
    List<Integer> cells,
    List<SetUp> setUps,
    Optional<FloorCheck> check) {
  public FloorPlan {
    free = List.copyOf(free);
    cells = List.copyOf(cells);
    setUps = List.copyOf(setUps);
  }
}
