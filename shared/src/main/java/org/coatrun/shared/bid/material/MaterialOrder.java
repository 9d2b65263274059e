package org.coatrun.shared.bid.material;

import org.coatrun.shared.job.MaterialSpec;
import org.coatrun.shared.rules.Bags;
import org.coatrun.shared.rules.MixingWater;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Mass;
import org.coatrun.shared.units.Volume;

/**
 * What a volume means in bags. Bags, pallets, trucks and gallons are made whole here, once for all
 * that the sum holds: the orders of floors do not add up to the order of the job, their {@link
 * #exactBags()} do.
 *
 * @param theoreticalYield what a bag gives in place where nothing is lost
 * @param adjustedYield what a bag gives in place with the losses of this sum
 * @param exactBags as a fraction
 * @param bags whole
 * @param dry weight in place
 * @param ordered weight of the whole bags
 * @param truckloads whole, by weight
 * @param storage floor that all bags would take at once
 * @param water for all bags
 * @param bondingGallons bonding coat as a fraction
 */
public record MaterialOrder(
    Volume theoreticalYield,
    Volume adjustedYield,
    double exactBags,
    long bags,
    long pallets,
    Mass dry,
    Mass ordered,
    long truckloads,
    Area storage,
    Volume water,
    double bondingGallons) {

  /** The order of a sum. */
  public static MaterialOrder of(MaterialSum sum, MaterialSpec spec) {
    Volume theoretical = Bags.theoreticalYield(spec.bag(), spec.density());
    double exact = Bags.exact(sum.sprayed(), theoretical);
    long bags = Bags.whole(exact);
    long pallets = Bags.packs(bags, spec.bagsPerPallet());
    Mass ordered = spec.bag().times(bags);
    return new MaterialOrder(
        theoretical,
        exact > 0 ? sum.inPlace().times(1 / exact) : theoretical,
        exact,
        bags,
        pallets,
        Bags.dry(sum.inPlace(), spec.density()),
        ordered,
        Bags.packs(bags, Packing.of(spec).bagsPerTruck()),
        Bags.storage(pallets, spec.palletArea(), spec.palletsHigh()),
        MixingWater.forDry(ordered, spec.waterRatio()),
        sum.bonding().squareMetres() / spec.bondingCoverage().squareMetres());
  }

  /** Gallons of bonding coat, whole. */
  public long wholeBondingGallons() {
    return Bags.whole(bondingGallons);
  }
}
