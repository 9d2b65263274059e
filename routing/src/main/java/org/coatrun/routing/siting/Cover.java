package org.coatrun.routing.siting;

import java.util.List;

/**
 * A way to cover the floors.
 *
 * @param machines indices of the machine spots used, ascending
 * @param options indices of the options used, ascending
 * @param floors the choice on each floor
 * @param uncovered cells left uncovered, alike floors counted each
 * @param cost in all, without what uncovered cells count for
 */
public record Cover(
    List<Integer> machines,
    List<Integer> options,
    List<FloorChoice> floors,
    int uncovered,
    double cost) {

  public Cover {
    machines = List.copyOf(machines);
    options = List.copyOf(options);
    floors = List.copyOf(floors);
  }

  /**
   * The choice on one floor.
   *
   * @param option for each cell, the option it is sprayed through, or −1
   * @param outlet for each cell, the outlet, or −1
   */
  public record FloorChoice(int[] option, int[] outlet) {}
}
