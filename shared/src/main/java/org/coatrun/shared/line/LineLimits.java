package org.coatrun.shared.line;

import java.util.Objects;
import java.util.Optional;
import org.coatrun.shared.units.Length;

/**
 * What a material line may be. Every limit is a number of the job file; the defaults are common
 * practice.
 *
 * @param flexible all flexible hose from the machine to the nozzle, the whip included
 * @param hoseRise highest rise without standpipe
 * @param hoseStoreys most storeys up without standpipe
 * @param whip length of the whip hose at the nozzle, within {@code flexible}
 * @param tail hose between the machine and pipe that begins near it
 * @param bendRadius least radius of a hose
 * @param slack what is laid beyond the taut length, as a part of it
 * @param margin what hose keeps off walls, columns and edges
 * @param outletSpacing about how far outlets along a pipe are apart
 * @param riserGap how far a riser may stand from the free floor that it serves
 * @param machineLift greatest rise that the machine is rated for, where known
 * @param machineEquivalent greatest equivalent length that the machine is rated for, where known;
 *     compared and shown, never a hard limit
 */
public record LineLimits(
    Length flexible,
    Length hoseRise,
    int hoseStoreys,
    Length whip,
    Length tail,
    Length bendRadius,
    double slack,
    Length margin,
    Length outletSpacing,
    Length riserGap,
    Optional<Length> machineLift,
    Optional<Length> machineEquivalent) {

  /** Lengths that differ by less than this many metres count as equal: the noise of a sum. */
  public static final double NOISE = 1e-6;

  public LineLimits {
    Objects.requireNonNull(machineLift);
    Objects.requireNonNull(machineEquivalent);
    if (flexible.compareTo(whip) < 0) {
      throw new IllegalArgumentException("a whip longer than all flexible hose together");
    }
    if (slack < 0 || hoseStoreys < 0 || bendRadius.metres() < 0 || margin.metres() < 0) {
      throw new IllegalArgumentException("a line limit below zero");
    }
    if (outletSpacing.metres() <= 0) {
      throw new IllegalArgumentException("outlets without a distance between them");
    }
  }

  /**
   * 250 ft of flexible hose in all, standpipe beyond 36 ft of rise or three storeys, a whip of 25
   * ft (common practice); hose that bends at 3 ft, 5 % slack, 6 in kept clear, outlets 30 ft apart.
   */
  public static LineLimits commonPractice() {
    return new LineLimits(
        Length.ofFeet(250),
        Length.ofFeet(36),
        3,
        Length.ofFeet(25),
        Length.ofFeet(10),
        Length.ofFeet(3),
        0.05,
        Length.ofMetres(0.15),
        Length.ofFeet(30),
        Length.ofFeet(10),
        Optional.empty(),
        Optional.empty());
  }

  /** The same with another limit on flexible hose. */
  public LineLimits withFlexible(Length other) {
    return new LineLimits(
        other,
        hoseRise,
        hoseStoreys,
        whip,
        tail,
        bendRadius,
        slack,
        margin,
        outletSpacing,
        riserGap,
        machineLift,
        machineEquivalent);
  }

  /** The same with another slack. */
  public LineLimits withSlack(double other) {
    return new LineLimits(
        flexible,
        hoseRise,
        hoseStoreys,
        whip,
        tail,
        bendRadius,
        other,
        margin,
        outletSpacing,
        riserGap,
        machineLift,
        machineEquivalent);
  }

  /** The same with a machine rated for this rise. */
  public LineLimits withMachineLift(Length rise) {
    return new LineLimits(
        flexible,
        hoseRise,
        hoseStoreys,
        whip,
        tail,
        bendRadius,
        slack,
        margin,
        outletSpacing,
        riserGap,
        Optional.of(rise),
        machineEquivalent);
  }

  /** Whether hose may take a rise of this height over this many storeys, or pipe must. */
  public boolean hoseMayRise(Length rise, int storeys) {
    return rise.metres() <= hoseRise.metres() + NOISE && storeys <= hoseStoreys;
  }

  /** Whether this much flexible hose in all is allowed. */
  public boolean flexibleAllowed(Length all) {
    return all.metres() <= flexible.metres() + NOISE;
  }

  /** Whether the machine is rated for this rise, as far as its rating is known. */
  public boolean machineLifts(Length rise) {
    return machineLift.isEmpty() || rise.metres() <= machineLift.get().metres() + NOISE;
  }
}
