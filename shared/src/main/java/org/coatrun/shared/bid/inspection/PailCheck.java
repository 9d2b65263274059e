package org.coatrun.shared.bid.inspection;

import org.coatrun.shared.job.MaterialSpec;
import org.coatrun.shared.rules.MixingWater;
import org.coatrun.shared.units.FlowRate;
import org.coatrun.shared.units.Length;

/**
 * What a pail held under the nozzle tells.
 *
 * @param flow of water
 * @param bagsPerHour the greatest rate of bags that it supports
 */
public record PailCheck(FlowRate flow, double bagsPerHour) {

  /**
   * Reads a pail.
   *
   * @param depth of the water in it
   * @param diameter inside, of a pail with straight sides
   * @param seconds that the water ran
   * @throws IllegalArgumentException where one of them is not positive
   */
  public static PailCheck of(Length depth, Length diameter, double seconds, MaterialSpec material) {
    FlowRate flow = MixingWater.pail(depth, diameter, seconds);
    return new PailCheck(
        flow, MixingWater.bagsPerHour(flow, material.waterRatio(), material.bag()));
  }
}
