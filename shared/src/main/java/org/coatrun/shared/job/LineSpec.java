package org.coatrun.shared.job;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.line.LineLimits;
import org.coatrun.shared.line.LineStock;
import org.coatrun.shared.line.ReachLimits;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Share;
import org.coatrun.shared.yaml.Key;

/** What the material line may be, and the pieces it is made of. */
public record LineSpec(
    @Key(
            note = "flexible hose at most, hose risers included [common practice]",
            fallback = "250 ft",
            least = "10 ft",
            most = "2000 ft")
        Length flexibleHose,
    @Key(
            note = "whip hose at most, part of the flexible hose [common practice]",
            fallback = "25 ft",
            least = "0 ft",
            most = "200 ft")
        Length whip,
    @Key(
            note = "pole gun at most [common practice]",
            fallback = "12 ft",
            least = "0 ft",
            most = "60 ft")
        Length poleGun,
    @Key(
            note = "a section of the pole gun [common practice]",
            fallback = "3 ft",
            least = "1 ft",
            most = "20 ft")
        Length poleSection,
    @Key(
            note = "flexible hose at the tip of the pole gun [common practice]",
            fallback = "18 in",
            least = "0 in",
            most = "10 ft")
        Length poleTip,
    @Key(
            note = "height that hose may carry material up without a standpipe [common practice]",
            fallback = "36 ft",
            least = "0 ft",
            most = "500 ft")
        Length hoseRise,
    @Key(
            note = "storeys that hose may carry material up without a standpipe [common practice]",
            fallback = "3",
            least = "0",
            most = "50")
        int hoseStoreys,
    @Key(
            note = "inside diameter of the transfer hose [common practice]",
            fallback = "3 in",
            least = "1 in",
            most = "6 in")
        Length hoseBore,
    @Key(
            note = "inside diameter of the whip hose [common practice]",
            fallback = "2-1/2 in",
            least = "1 in",
            most = "6 in")
        Length whipBore,
    @Key(
            note = "inside diameter of the standpipe [common practice]",
            fallback = "3 in",
            least = "1 in",
            most = "6 in")
        Length pipeBore,
    @Key(
            note = "length of a piece of hose [common practice]",
            fallback = "50 ft",
            least = "5 ft",
            most = "500 ft")
        Length hosePiece,
    @Key(
            note = "length of a piece of standpipe [common practice]",
            fallback = "10 ft",
            least = "1 ft",
            most = "100 ft")
        Length pipePiece,
    @Key(
            note = "distance of outlets along a pipe [common practice]",
            fallback = "30 ft",
            least = "3 ft",
            most = "300 ft")
        Length outletSpacing,
    @Key(
            note = "room that hose keeps from walls and columns [common practice]",
            fallback = "6 in",
            least = "0 in",
            most = "10 ft")
        Length clearance,
    @Key(
            note = "least radius that hose is bent to [common practice]",
            fallback = "3 ft",
            least = "0 ft",
            most = "50 ft")
        Length bendRadius,
    @Key(
            note = "hose laid beyond its taut length [common practice]",
            fallback = "5 %",
            least = "0 %",
            most = "50 %")
        Share slack,
    @Key(
            note = "hose between the machine and a pipe that begins beside it [common practice]",
            fallback = "10 ft",
            least = "0 ft",
            most = "100 ft")
        Length tail,
    @Key(
            note = "how far a riser may stand from the floor that it serves",
            fallback = "10 ft",
            least = "1 ft",
            most = "100 ft")
        Length riserGap,
    @Key(
            note = "from one clamp or brace of level pipe to the next [common practice]",
            fallback = "10 ft",
            least = "1 ft",
            most = "100 ft")
        Length clampSpacing,
    @Key(
            note = "nozzle from the steel [common practice]",
            fallback = "24 in",
            least = "6 in",
            most = "6 ft")
        Length nozzleDistance,
    @Key(
            note = "length of a pass along a flute [common practice]",
            fallback = "12 ft",
            least = "1 ft",
            most = "100 ft")
        Length flutePass,
    @Key(
            note = "equivalent feet for a foot of rise [powderprocess.net quick method: 2]",
            fallback = "2",
            least = "1",
            most = "20")
        double riseFactor,
    @Key(
            note = "equivalent length of a bend [powderprocess.net quick method: 5 m]",
            fallback = "5 m",
            least = "0 m",
            most = "50 m")
        Length bendEquivalent) {

  /**
   * @throws IllegalArgumentException where the whip is longer than all flexible hose together
   */
  public LineSpec {
    if (flexibleHose.compareTo(whip) < 0) {
      throw new IllegalArgumentException("the whip is longer than all flexible hose together");
    }
  }

  /** The limits that routing keeps, with what the machine is rated for. */
  public LineLimits limits(MachineSpec machine) {
    return new LineLimits(
        flexibleHose,
        hoseRise,
        hoseStoreys,
        whip,
        tail,
        bendRadius,
        slack.fraction(),
        clearance,
        outletSpacing,
        riserGap,
        machine.liftRating(),
        machine.conveyingRating());
  }

  /** The pieces; hose comes whole and in halves. */
  public LineStock stock() {
    return new LineStock(
        List.of(hosePiece, hosePiece.times(0.5)),
        pipePiece,
        clampSpacing,
        poleSection,
        poleTip,
        pipeBore);
  }

  /**
   * How high each means of access reaches, by the height bands of the labour: a pole gun is held at
   * what its band leaves over its length.
   */
  public ReachLimits reach(Labour labour) {
    Length floor = top(labour, Access.FLOOR).orElse(Length.ZERO);
    Length pole = max(top(labour, Access.POLE_GUN).orElse(floor), floor);
    Length held = max(pole.minus(poleGun), Length.ZERO);
    Length gun = pole.minus(held);
    return new ReachLimits(floor, gun, held, max(top(labour, Access.LIFT).orElse(pole), pole));
  }

  private static Optional<Length> top(Labour labour, Access access) {
    return labour.bands().stream()
        .filter(b -> b.access() == access)
        .map(HeightBand::upTo)
        .reduce(LineSpec::max);
  }

  private static Length max(Length a, Length b) {
    return a.compareTo(b) >= 0 ? a : b;
  }
}
