package org.coatrun.shared.bid.material;

import org.coatrun.shared.job.MaterialSpec;
import org.coatrun.shared.units.Area;

/**
 * How bags travel and stand: on pallets, so many to a truck. Where a truck does not carry one full
 * pallet, a pallet is as many bags as it carries.
 *
 * @param bagsPerPallet at least 1
 * @param palletsPerTruck at least 1
 */
public record Packing(int bagsPerPallet, int palletsPerTruck) {

  /** A truck that stands within a rounding error of one more bag carries it. */
  private static final double SLACK = 1e-9;

  public Packing {
    if (bagsPerPallet < 1 || palletsPerTruck < 1) {
      throw new IllegalArgumentException("a truck brings at least a pallet of at least a bag");
    }
  }

  /** The packing of a job. */
  public static Packing of(MaterialSpec spec) {
    double carried = spec.truckload().kilograms() / spec.bag().kilograms() + SLACK;
    int bags = Math.max(1, (int) Math.floor(carried));
    int pallet = Math.min(bags, spec.bagsPerPallet());
    return new Packing(pallet, bags / pallet);
  }

  /** Bags that a full truck brings: whole pallets. */
  public int bagsPerTruck() {
    return bagsPerPallet * palletsPerTruck;
  }

  /** Pallets that fit in a room. */
  public static long room(Area storage, MaterialSpec spec) {
    double stacks = storage.squareMetres() / spec.palletArea().squareMetres() + SLACK;
    return (long) Math.floor(stacks) * spec.palletsHigh();
  }
}
