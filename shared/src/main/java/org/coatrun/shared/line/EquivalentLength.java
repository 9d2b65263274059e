package org.coatrun.shared.line;

import org.coatrun.shared.units.Length;

/**
 * The length of straight level pipe that would resist conveying as a line does, by two published
 * rules that disagree: an indication, never a proof.
 *
 * @param quick level + 2 × rise + 5 m for each bend (quick method for first designs)
 * @param byBends pipe at its length, hose at five times its length, each bend of a quarter turn the
 *     larger of 40 inside diameters and 20 ft, other turns in proportion
 */
public record EquivalentLength(Length quick, Length byBends) {}
