package org.coatrun.cli.line;

import java.util.OptionalLong;
import org.coatrun.shared.bid.material.Packing;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.rules.Bags;
import org.coatrun.shared.units.Volume;

/**
 * Bags that a floor takes at the theoretical yield, nothing lost, and what the storage room holds.
 *
 * @param room bags that the storage room holds; empty where the job file states none
 */
record FloorBags(long needed, OptionalLong room) {

  static FloorBags of(LinePlan plan, FloorPlan floor, Job job) {
    Volume coating = Volume.ofCubicMetres(0);
    for (int c : floor.cells()) {
      coating = coating.plus(plan.cells().get(c).coating());
    }
    Volume yield = Bags.theoreticalYield(job.material().bag(), job.material().density());
    OptionalLong room =
        job.programme().storage().isPresent()
            ? OptionalLong.of(
                Packing.room(job.programme().storage().get(), job.material())
                    * job.material().bagsPerPallet())
            : OptionalLong.empty();
    return new FloorBags(Bags.whole(Bags.exact(coating, yield)), room);
  }

  /** Whether all bags of the floor find room at once; true where no room is stated. */
  boolean fit() {
    return room.isEmpty() || needed <= room.getAsLong();
  }
}
