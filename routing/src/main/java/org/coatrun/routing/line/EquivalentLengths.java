package org.coatrun.routing.line;

import org.coatrun.shared.line.EquivalentLength;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.units.Length;

/**
 * Equivalent lengths for conveying by air, by two published rules that disagree; an indication.
 *
 * <p>Quick rule: level + 2 × rise + 5 m a bend (powderprocess.net, pipe equivalent length, for
 * first designs only). By bends: a quarter turn of long radius is the larger of 40 inside diameters
 * and 20 ft, other turns in proportion, rubber hose five times its length, rises at their own
 * length (cheresources.com, pneumatic conveying design).
 */
public final class EquivalentLengths {

  private static final double BEND = 5;
  private static final double HOSE = 5;
  private static final double DIAMETERS = 40;
  private static final double LEAST_BEND = 20 * 0.3048;
  private static final double QUARTER = Math.PI / 2;

  private EquivalentLengths() {}

  /**
   * Both lengths of a route; each rise has a quarter turn at either end.
   *
   * @param inside inside diameter of the line
   */
  public static EquivalentLength of(Route route, Length inside) {
    double level = 0;
    double hose = 0;
    double quarters = 0;
    for (Leg leg : route.legs()) {
      double laid = leg.laid().metres();
      level += leg.kind().rising() ? laid - leg.taut().metres() : laid;
      hose += leg.kind().flexible() ? laid : 0;
      quarters += leg.turns().stream().mapToDouble(t -> t / QUARTER).sum();
      quarters += leg.kind().rising() ? 2 : 0;
    }
    double rise = route.rise().metres();
    return new EquivalentLength(
        quick(Length.ofMetres(level), Length.ofMetres(rise), route.bends()),
        byBends(
            Length.ofMetres(route.length().metres() - hose),
            Length.ofMetres(hose),
            quarters,
            inside));
  }

  /** Level + 2 × rise + 5 m for each bend. */
  public static Length quick(Length level, Length rise, int bends) {
    return level.plus(rise.times(2)).plus(Length.ofMetres(BEND * bends));
  }

  /**
   * Pipe + 5 × hose + the larger of 40 inside diameters and 20 ft for each quarter turn; rises are
   * part of pipe or hose.
   */
  public static Length byBends(Length pipe, Length hose, double quarterTurns, Length inside) {
    double bend = Math.max(DIAMETERS * inside.metres(), LEAST_BEND);
    return pipe.plus(hose.times(HOSE)).plus(Length.ofMetres(bend * quarterTurns));
  }
}
