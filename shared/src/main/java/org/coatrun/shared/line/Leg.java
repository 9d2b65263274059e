package org.coatrun.shared.line;

import java.util.List;
import java.util.Objects;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;

/**
 * One stretch of a material line.
 *
 * @param floor index of the floor it lies on; of a rising leg, the floor it begins on
 * @param path seen from above, at least two points
 * @param taut its length pulled taut with sharp corners; of a rising leg, the rise
 * @param laid its length as laid, bends and slack included
 * @param turns its turns in radians, in order
 */
public record Leg(
    Kind kind, int floor, List<Vec2> path, Length taut, Length laid, List<Double> turns) {

  /** What a leg is made of. */
  public enum Kind {
    HOSE(true, false),
    PIPE(false, false),
    RISER_HOSE(true, true),
    RISER_PIPE(false, true),
    WHIP(true, false);

    private final boolean flexible;
    private final boolean rising;

    Kind(boolean flexible, boolean rising) {
      this.flexible = flexible;
      this.rising = rising;
    }

    /** Whether it counts as flexible hose. */
    public boolean flexible() {
      return flexible;
    }

    /** Whether it goes from floor to floor. */
    public boolean rising() {
      return rising;
    }
  }

  /** Turns flatter than this, in radians, are no bend. */
  private static final double FLAT = Math.toRadians(5);

  public Leg {
    Objects.requireNonNull(kind);
    path = List.copyOf(path);
    turns = List.copyOf(turns);
    if (path.size() < 2) {
      throw new IllegalArgumentException("a leg of " + path.size() + " points");
    }
  }

  /** Its turns of more than five degrees. */
  public int bends() {
    return (int) turns.stream().filter(t -> t > FLAT).count();
  }
}
