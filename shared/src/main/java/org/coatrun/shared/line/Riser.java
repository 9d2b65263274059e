package org.coatrun.shared.line;

import java.util.Objects;
import org.coatrun.shared.shape.Vec2;

/**
 * A place where pipe or hose can go up through storeys.
 *
 * @param name unique among the risers of a plan
 * @param at its place seen from above
 * @param lowest index of the lowest floor it stands on, the floors counted from the lowest up
 * @param highest index of the highest floor it comes out on; not below {@code lowest}
 */
public record Riser(String name, Kind kind, Vec2 at, int lowest, int highest) {

  /** What the line rises through or along. */
  public enum Kind {
    SLAB_OPENING,
    STAIR,
    SLAB_EDGE,
    CHASE
  }

  public Riser {
    Objects.requireNonNull(name);
    Objects.requireNonNull(kind);
    Objects.requireNonNull(at);
    if (lowest < 0 || highest < lowest) {
      throw new IllegalArgumentException(
          "riser " + name + " from floor " + lowest + " to floor " + highest);
    }
  }

  /** Whether a line can go from one floor to the other in it. */
  public boolean joins(int from, int to) {
    return lowest <= Math.min(from, to) && Math.max(from, to) <= highest;
  }
}
