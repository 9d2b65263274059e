package org.coatrun.routing.line;

import java.util.List;
import org.coatrun.routing.network.HosePath;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.LineLimits;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/** Turns ways into legs as laid: hose with its bends and slack, pipe as it lies. */
final class Laying {

  private final LineLimits limits;

  Laying(LineLimits limits) {
    this.limits = limits;
  }

  /** Hose as laid along a path, in metres: (taut + bends) × (1 + slack). */
  double laid(HosePath path) {
    double bends = path.bendAllowance(limits.bendRadius().metres());
    return (path.length() + bends) * (1 + limits.slack());
  }

  Leg hose(int floor, HosePath path) {
    return leg(Leg.Kind.HOSE, floor, path, laid(path));
  }

  Leg pipe(int floor, HosePath path) {
    return leg(Leg.Kind.PIPE, floor, path, path.length());
  }

  /**
   * A rise from one floor; {@code beside} is what lies between riser and free floor at its ends.
   */
  Leg rise(boolean pipe, int floor, Vec2 from, Vec2 to, double rise, double beside) {
    return new Leg(
        pipe ? Leg.Kind.RISER_PIPE : Leg.Kind.RISER_HOSE,
        floor,
        List.of(from, to),
        Length.ofMetres(rise),
        Length.ofMetres(rise + beside),
        List.of());
  }

  Leg whip(int floor, Vec2 at) {
    return new Leg(Leg.Kind.WHIP, floor, List.of(at, at), limits.whip(), limits.whip(), List.of());
  }

  private static Leg leg(Leg.Kind kind, int floor, HosePath path, double laid) {
    return new Leg(
        kind,
        floor,
        path.points(),
        Length.ofMetres(path.length()),
        Length.ofMetres(laid),
        path.turns());
  }
}
