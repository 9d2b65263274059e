package org.coatrun.shared.rules;

import org.coatrun.shared.units.FlowRate;
import org.coatrun.shared.units.Volume;

/** Air while the material cures: four changes an hour in enclosed areas (common practice). */
public final class Ventilation {

  /** Air changes an hour until cured (common practice). */
  public static final double CHANGES_PER_HOUR = 4;

  private Ventilation() {}

  /** The fan that changes a volume of air so many times an hour: volume x changes / 60 a minute. */
  public static FlowRate fan(Volume air, double changesPerHour) {
    return FlowRate.ofCubicFeetPerMinute(air.cubicFeet() * changesPerHour / 60);
  }

  /** The changes an hour that a fan gives a volume of air. */
  public static double changesPerHour(Volume air, FlowRate fan) {
    return fan.cubicFeetPerMinute() * 60 / air.cubicFeet();
  }
}
