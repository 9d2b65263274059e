package org.coatrun.shared.rules;

import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Share;

/**
 * How many readings and samples a floor takes.
 *
 * <p>Source: IBC 1705.15 (1705.14.4 of 2018; ASTM E605): at least four thickness readings for each
 * 1,000 ft2 of sprayed floor, roof or wall; 25 % of the structural members on each floor; density
 * and bond samples for each 2,500 ft2 (from memory).
 */
public final class InspectionCount {

  private static final double READING_AREA_FT2 = 1000;
  private static final double SAMPLE_AREA_FT2 = 2500;
  private static final int READINGS = 4;
  private static final double SHARE = 0.25;
  private static final double SLACK = 1e-9;

  private InspectionCount() {}

  /** Groups of four readings for a sprayed area: one for each 1,000 ft2 or part of it. */
  public static long groups(Area sprayed) {
    return parts(sprayed, READING_AREA_FT2);
  }

  /** Thickness readings for a sprayed area. */
  public static long readings(Area sprayed) {
    return READINGS * groups(sprayed);
  }

  /** Members to be read of {@code members} on a floor: 25 %, rounded up. */
  public static long members(long members) {
    return (long) Math.ceil(members * SHARE - SLACK);
  }

  /** Members to be read where the job asks for another share; rounded up. */
  public static long members(long members, Share share) {
    return (long) Math.ceil(members * share.fraction() - SLACK);
  }

  /** Density samples, and bond samples as many: one for each 2,500 ft2 or part of it. */
  public static long samples(Area floor) {
    return parts(floor, SAMPLE_AREA_FT2);
  }

  private static long parts(Area area, double squareFeet) {
    return (long) Math.ceil(area.squareFeet() / squareFeet - SLACK);
  }
}
