package org.coatrun.shared.line;

import java.util.List;
import java.util.function.Predicate;
import org.coatrun.shared.units.Length;

/**
 * A material line from the machine to a place of work.
 *
 * @param legs from the machine on; the last one is the whip
 */
public record Route(List<Leg> legs) implements RouteResult {

  public Route {
    legs = List.copyOf(legs);
    if (legs.isEmpty()) {
      throw new IllegalArgumentException("a route without a leg");
    }
  }

  /** All flexible hose as laid, the whip included. */
  public Length flexible() {
    return laid(l -> l.kind().flexible());
  }

  /** All pipe, level and rising. */
  public Length pipe() {
    return laid(l -> !l.kind().flexible());
  }

  /** Height between machine and work floor, up or down. */
  public Length rise() {
    return sum(l -> l.kind().rising(), false);
  }

  /** All of the line as laid. */
  public Length length() {
    return laid(l -> true);
  }

  /** Bends on the way: turns of more than five degrees, and one at either end of each rise. */
  public int bends() {
    return legs.stream().mapToInt(l -> l.bends() + (l.kind().rising() ? 2 : 0)).sum();
  }

  private Length laid(Predicate<Leg> which) {
    return sum(which, true);
  }

  private Length sum(Predicate<Leg> which, boolean laid) {
    Length sum = Length.ZERO;
    for (Leg leg : legs) {
      if (which.test(leg)) {
        sum = sum.plus(laid ? leg.laid() : leg.taut());
      }
    }
    return sum;
  }
}
