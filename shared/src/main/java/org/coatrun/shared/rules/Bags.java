package org.coatrun.shared.rules;

import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Density;
import org.coatrun.shared.units.Mass;
import org.coatrun.shared.units.Share;
import org.coatrun.shared.units.Volume;

/**
 * From a volume in place to bags, pallets and truckloads.
 *
 * <p>Theoretical yield: bag weight x 12 / in-place density (a 50 lb bag at 15 pcf gives 40 board
 * feet), which is the bag's mass over the density in place. Waste per cent is common practice.
 */
public final class Bags {

  private static final double SLACK = 1e-9;

  private Bags() {}

  /** What one bag gives in place where nothing is lost. */
  public static Volume theoreticalYield(Mass bag, Density inPlace) {
    return Volume.ofCubicMetres(bag.kilograms() / inPlace.kilogramsPerCubicMetre());
  }

  /** What one bag gives when a share of it is lost. */
  public static Volume adjustedYield(Mass bag, Density inPlace, Share waste) {
    return theoreticalYield(bag, inPlace).times(kept(waste));
  }

  /** What must be sprayed so that {@code inPlace} remains when a share is lost. */
  public static Volume withWaste(Volume inPlace, Share waste) {
    return inPlace.times(1 / kept(waste));
  }

  /** Dry mass of a volume in place. */
  public static Mass dry(Volume inPlace, Density density) {
    return Mass.ofKilograms(inPlace.cubicMetres() * density.kilogramsPerCubicMetre());
  }

  /** Bags as a fraction, by adjusted yield. */
  public static double exact(Volume inPlace, Volume yieldPerBag) {
    return inPlace.cubicMetres() / yieldPerBag.cubicMetres();
  }

  /** The least whole number that is not under {@code amount}: bags, pallets, trucks. */
  public static long whole(double amount) {
    return (long) Math.ceil(amount - SLACK);
  }

  /** Whole packs of {@code perPack} that hold {@code count}. */
  public static long packs(long count, int perPack) {
    return Math.floorDiv(count + perPack - 1, (long) perPack);
  }

  /** Floor that pallets take: footprint and aisles, stacked {@code high}. */
  public static Area storage(long pallets, Area perPallet, int high) {
    return perPallet.times(packs(pallets, high));
  }

  private static double kept(Share waste) {
    if (waste.fraction() < 0 || waste.fraction() >= 1) {
      throw new IllegalArgumentException("waste must be from 0 % to under 100 %");
    }
    return 1 - waste.fraction();
  }
}
