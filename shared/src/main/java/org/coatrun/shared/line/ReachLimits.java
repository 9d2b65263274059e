package org.coatrun.shared.line;

import org.coatrun.shared.units.Length;

/**
 * How high each means of access reaches. The defaults are common practice and can be changed in the
 * job file.
 *
 * @param nozzle height of steel that a person on the floor sprays by hand
 * @param poleGun longest pole gun
 * @param poleGunHold height at which a pole gun is held; it reaches this much more than its length
 * @param lift height of steel that a lift reaches
 */
public record ReachLimits(Length nozzle, Length poleGun, Length poleGunHold, Length lift) {

  /** By hand to 9 ft, a pole gun of 12 ft held at 4 ft, a lift to 40 ft (common practice). */
  public static ReachLimits commonPractice() {
    return new ReachLimits(
        Length.ofFeet(9), Length.ofFeet(12), Length.ofFeet(4), Length.ofFeet(40));
  }

  /** The simplest means that reaches steel of this height above the floor. */
  public Access accessTo(Length height) {
    if (reaches(nozzle, height)) {
      return Access.NOZZLE;
    }
    if (reaches(poleGun.plus(poleGunHold), height)) {
      return Access.POLE_GUN;
    }
    return reaches(lift, height) ? Access.LIFT : Access.SCAFFOLD;
  }

  /** The length of pole gun that steel of this height asks for; zero where the hand reaches. */
  public Length poleGunFor(Length height) {
    return reaches(nozzle, height) ? Length.ZERO : height.minus(poleGunHold);
  }

  private static boolean reaches(Length limit, Length height) {
    return height.metres() <= limit.metres() + LineLimits.NOISE;
  }
}
