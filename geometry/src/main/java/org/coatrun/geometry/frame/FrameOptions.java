package org.coatrun.geometry.frame;

import org.coatrun.shared.units.Length;

/**
 * How near is connected.
 *
 * @param endGap clear distance at a member's end that bolts, weld or clearance bridge
 * @param seat depth of a joist's or truss's bearing seat, which models often leave out
 * @param contactGap clear distance at which faces still touch
 * @param braceReach how far a brace's line is carried on past its end to find what its gusset, not
 *     modelled, connects it to
 */
public record FrameOptions(Length endGap, Length seat, Length contactGap, Length braceReach) {

  /**
   * 30 mm at ends, 10 mm for contact, 0.8 m for braces: common practice in detailing; a seat of 2½
   * in, as light joists have by the standard of their institute (from memory).
   */
  public static FrameOptions defaults() {
    return new FrameOptions(
        Length.ofMillimetres(30),
        Length.ofInches(2.6),
        Length.ofMillimetres(10),
        Length.ofMetres(0.8));
  }
}
