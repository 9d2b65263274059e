package org.coatrun.shared.rules;

import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Pressure;

/**
 * Least bond of sprayed material to steel.
 *
 * <p>Source: 150 psf (IBC 1705.15, formerly 1705.14.6); in a high-rise, whose highest occupied
 * floor lies more than 75 ft above the fire department's access, 430 psf up to a building height of
 * 420 ft and 1,000 psf above (IBC Table 403.2.4).
 */
public final class BondStrength {

  /** A highest occupied floor above this makes a high-rise (IBC 202). */
  public static final Length HIGH_RISE = Length.ofFeet(75);

  /** Above this building height the highest bond is asked. */
  public static final Length VERY_HIGH = Length.ofFeet(420);

  private BondStrength() {}

  /**
   * The least bond.
   *
   * @param highestFloor of the highest occupied floor above fire department access
   * @param buildingHeight height of the building
   */
  public static Pressure least(Length highestFloor, Length buildingHeight) {
    if (highestFloor.compareTo(HIGH_RISE) <= 0) {
      return Pressure.ofPsf(150);
    }
    return Pressure.ofPsf(buildingHeight.compareTo(VERY_HIGH) <= 0 ? 430 : 1000);
  }
}
