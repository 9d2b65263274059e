package org.coatrun.routing.line;

import java.util.Optional;
import org.coatrun.shared.line.LineLimits;
import org.coatrun.shared.units.Length;

/**
 * One way for material to come up: from a machine spot, over the ground, and up a riser or not at
 * all.
 *
 * @param spot index of the machine spot
 * @param riser index of the riser; empty for work on the machine's own floor
 * @param ground from the machine to the riser's foot, or to where pipe begins on its own floor
 * @param pipeRises whether pipe rises, or hose
 * @param from index of the machine's floor
 * @param lowest lowest floor served
 * @param highest highest floor served
 */
record LineOption(
    int spot,
    Optional<Integer> riser,
    GroundWay ground,
    boolean pipeRises,
    int from,
    int lowest,
    int highest) {

  /** Whether the limits let this option serve a floor that lies so high over the machine's. */
  boolean mayServe(int floor, double rise, LineLimits limits) {
    if (floor < lowest || floor > highest) {
      return false;
    }
    var height = Length.ofMetres(Math.abs(rise));
    boolean lifts = rise <= 0 || limits.machineLifts(height);
    return lifts && (pipeRises || limits.hoseMayRise(height, Math.abs(floor - from)));
  }
}
