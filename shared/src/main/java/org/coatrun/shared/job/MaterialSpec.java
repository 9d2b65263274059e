package org.coatrun.shared.job;

import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Density;
import org.coatrun.shared.units.Mass;
import org.coatrun.shared.yaml.Key;

/** The material: what a bag gives, and how bags are packed, carried and kept. */
public record MaterialSpec(
    @Key(
            note = "weight of a bag [common practice]",
            fallback = "50 lb",
            least = "1 lb",
            most = "3000 lb")
        Mass bag,
    @Key(note = "density in place, dry", fallback = "15 pcf", least = "5 pcf", most = "100 pcf")
        Density density,
    @Key(note = "loss by kind of member [common practice]") Waste waste,
    @Key(note = "which volume is ordered: area by thickness, or the true offset", fallback = "area")
        VolumeBasis order,
    @Key(
            note = "water to dry material by weight [common practice]",
            fallback = "1.2",
            least = "0.1",
            most = "5")
        double waterRatio,
    @Key(note = "bags on a pallet [common practice]", fallback = "40", least = "1", most = "500")
        int bagsPerPallet,
    @Key(
            note = "floor a pallet takes, with its share of the aisle [common practice]",
            fallback = "25 ft2",
            least = "1 ft2",
            most = "500 ft2")
        Area palletArea,
    @Key(note = "pallets on one another [common practice]", fallback = "1", least = "1", most = "5")
        int palletsHigh,
    @Key(
            note = "what a truck brings [common practice]",
            fallback = "44,000 lb",
            least = "500 lb",
            most = "100,000 lb")
        Mass truckload,
    @Key(
            note = "how long bags keep, dry, off the floor and under cover [common practice]",
            fallback = "180 days",
            least = "1 days",
            most = "2000 days",
            unit = "days")
        int shelfLife,
    @Key(
            note = "area that a gallon of bonding coat covers [common practice]",
            fallback = "300 ft2",
            least = "10 ft2",
            most = "5000 ft2")
        Area bondingCoverage) {

  /**
   * @throws IllegalArgumentException where a truck cannot carry a bag
   */
  public MaterialSpec {
    if (truckload.compareTo(bag) < 0) {
      throw new IllegalArgumentException("a truckload must carry at least one bag");
    }
  }
}
