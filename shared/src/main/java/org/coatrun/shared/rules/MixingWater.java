package org.coatrun.shared.rules;

import org.coatrun.shared.units.FlowRate;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Mass;
import org.coatrun.shared.units.Volume;

/**
 * Water that the material takes, and what a measured flow supports.
 *
 * <p>Water to dry material 1.2 : 1 by weight (common practice, a default). Water weighs 8.34 lb a
 * US gallon, so bags/h = gal/min x 60 x 8.34 / (ratio x bag lb).
 */
public final class MixingWater {

  /** Water to dry material by weight (common practice). */
  public static final double RATIO = 1.2;

  private static final double POUNDS_PER_GALLON = 8.34;
  private static final double MINUTES_PER_HOUR = 60;

  private MixingWater() {}

  /** The water for a mass of dry material. */
  public static Volume forDry(Mass dry, double ratio) {
    return Volume.ofUsGallons(dry.pounds() * ratio / POUNDS_PER_GALLON);
  }

  /** The greatest rate of bags an hour that a flow supports. */
  public static double bagsPerHour(FlowRate flow, double ratio, Mass bag) {
    return flow.gallonsPerMinute() * MINUTES_PER_HOUR * POUNDS_PER_GALLON / (ratio * bag.pounds());
  }

  /** The flow that a rate of bags an hour needs. */
  public static FlowRate forBagRate(double bagsPerHour, double ratio, Mass bag) {
    return FlowRate.ofGallonsPerMinute(
        bagsPerHour * ratio * bag.pounds() / (MINUTES_PER_HOUR * POUNDS_PER_GALLON));
  }

  /**
   * The flow into a straight-sided pail: pi/4 d2 h over the time (geometry).
   *
   * @throws IllegalArgumentException where depth, diameter or seconds are not positive
   */
  public static FlowRate pail(Length depth, Length diameter, double seconds) {
    if (!(depth.metres() > 0) || !(diameter.metres() > 0) || !(seconds > 0)) {
      throw new IllegalArgumentException("a pail check needs depth, diameter and seconds above 0");
    }
    double d = diameter.metres();
    return FlowRate.ofCubicMetresPerSecond(Math.PI / 4 * d * d * depth.metres() / seconds);
  }
}
