package org.coatrun.shared.rules;

import org.coatrun.shared.units.FlowRate;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Pressure;
import org.coatrun.shared.units.Volume;

/** Pressure in the water line: lift, friction, and what the pump must give. */
public final class WaterLine {

  /** Least pressure at the nozzle (common practice). */
  public static final Pressure AT_NOZZLE = Pressure.ofPsi(65);

  /** Tank of a booster pump (common practice). */
  public static final Volume BOOSTER_TANK = Volume.ofUsGallons(55);

  private static final double PSI_PER_FOOT = 0.433;
  private static final double HAZEN_WILLIAMS = 4.52;
  private static final double FLOW_EXPONENT = 1.85;
  private static final double DIAMETER_EXPONENT = 4.87;
  private static final double VELOCITY = 0.4087;

  private WaterLine() {}

  /** Static head of a rise: 0.433 psi a foot; negative for a fall. */
  public static Pressure head(Length rise) {
    return Pressure.ofPsi(PSI_PER_FOOT * rise.feet());
  }

  /**
   * Friction by Hazen-Williams: p = 4.52 Q^1.85 / (C^1.85 d^4.87) psi/ft, Q in US gal/min, d in
   * inches (form of NFPA 13).
   *
   * @param c roughness: 150 plastic or copper, 140 new steel or polyethylene, 120 galvanised or
   *     older steel, 100 cast iron
   */
  public static Pressure friction(FlowRate flow, Length inside, double c, Length length) {
    double perFoot =
        HAZEN_WILLIAMS
            * Math.pow(flow.gallonsPerMinute(), FLOW_EXPONENT)
            / (Math.pow(c, FLOW_EXPONENT) * Math.pow(inside.inches(), DIAMETER_EXPONENT));
    return Pressure.ofPsi(perFoot * length.feet());
  }

  /** Friction in fire hose: C (Q/100)^2 (L/100) psi, Q in US gal/min, L in feet (fire service). */
  public static Pressure hoseFriction(FlowRate flow, HoseSize hose, Length length) {
    double hundreds = flow.gallonsPerMinute() / 100;
    return Pressure.ofPsi(hose.coefficient() * hundreds * hundreds * length.feet() / 100);
  }

  /** Mean velocity in feet per second: 0.4087 Q / d2, Q in US gal/min, d in inches. */
  public static double feetPerSecond(FlowRate flow, Length inside) {
    return VELOCITY * flow.gallonsPerMinute() / (inside.inches() * inside.inches());
  }

  /** What the pump must give: the nozzle's pressure, the lift, and the friction on the way. */
  public static Pressure atPump(Pressure nozzle, Length rise, Pressure friction) {
    return nozzle.plus(head(rise)).plus(friction);
  }
}
