package org.coatrun.shared.line;

import java.util.Objects;

/**
 * A place where a slab is open to the storey below.
 *
 * @param name what the model or the job file calls it; may be empty
 */
public record SlabOpening(String name, Kind kind, Region region) {

  /** What the opening is for. */
  public enum Kind {
    /** A shaft or another hole in the slab. */
    SHAFT,
    /** The well of a stair or ramp. */
    STAIR,
    /** A chase that the job file names for the pipe. */
    CHASE
  }

  public SlabOpening {
    Objects.requireNonNull(name);
    Objects.requireNonNull(kind);
    Objects.requireNonNull(region);
  }
}
