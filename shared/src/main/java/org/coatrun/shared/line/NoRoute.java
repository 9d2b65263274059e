package org.coatrun.shared.line;

import java.util.Objects;
import org.coatrun.shared.units.Length;

/**
 * No line leads to a place of work within the limits.
 *
 * @param limit what stands against the nearest miss
 * @param over by how much the nearest miss breaks it; zero where no number can be given
 * @param sentence the nearest miss in one sentence
 */
public record NoRoute(Limit limit, Length over, String sentence) implements RouteResult {

  /** What may stand against a route. */
  public enum Limit {
    /** More flexible hose than allowed in all. */
    FLEXIBLE_HOSE,
    /** The machine is not rated for the rise. */
    MACHINE_LIFT,
    /** No riser comes out on the floor. */
    NO_RISER,
    /** Walls, edges or keep-outs close every way over the floor. */
    NO_WAY,
    /** There is no place for a machine. */
    NO_MACHINE
  }

  public NoRoute {
    Objects.requireNonNull(limit);
    Objects.requireNonNull(over);
    Objects.requireNonNull(sentence);
  }
}
