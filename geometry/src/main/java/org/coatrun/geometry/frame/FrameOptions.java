package org.coatrun.geometry.frame;

import org.coatrun.shared.units.Length;

/**
 * How near is connected.
 *
 * @param endGap clear distance at a member's end that bolts, weld or clearance bridge
 * @param contactGap clear distance at which faces still touch
 * @param braceReach how far a brace's line is carried on past its end to find what its gusset, not
 *     modelled, connects it to
 */
public record FrameOptions(Length endGap, Length contactGap, Length braceReach) {

  /** 30 mm at ends, 10 mm for contact, 0.8 m for braces: common practice in detailing. */
  public static FrameOptions defaults() {
    return new FrameOptions(
        Length.ofMillimetres(30), Length.ofMillimetres(10), Length.ofMetres(0.8));
  }
}
