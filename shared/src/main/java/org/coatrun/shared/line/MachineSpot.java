package org.coatrun.shared.line;

import java.util.List;
import java.util.Objects;
import org.coatrun.shared.shape.Vec2;

/**
 * A place for the machine and its bags.
 *
 * @param name unique among the spots of a plan
 * @param floor index of the floor it stands on
 * @param at where the line leaves the machine; free floor
 * @param extraCost what this spot costs beyond setting up any machine: haul, feeders
 * @param needs what it needs, each in one sentence
 */
public record MachineSpot(String name, int floor, Vec2 at, double extraCost, List<String> needs) {
  public MachineSpot {
    Objects.requireNonNull(name);
    Objects.requireNonNull(at);
    needs = List.copyOf(needs);
    if (floor < 0 || !(extraCost >= 0)) {
      throw new IllegalArgumentException("spot " + name + " on floor " + floor);
    }
  }
}
