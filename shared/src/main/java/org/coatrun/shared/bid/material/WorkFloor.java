package org.coatrun.shared.bid.material;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;

/**
 * A floor that a crew works on.
 *
 * @param elevation in the model; floors without one come last
 * @param area of the floor, for the number of samples; empty where it is not known
 */
public record WorkFloor(String name, Optional<Length> elevation, Optional<Area> area) {

  /** From the lowest up; those without an elevation last; then by name. */
  public static final Comparator<WorkFloor> ORDER =
      Comparator.comparing((WorkFloor f) -> f.elevation().isEmpty())
          .thenComparingDouble(f -> f.elevation().map(Length::metres).orElse(0.0))
          .thenComparing(WorkFloor::name);

  public WorkFloor {
    Objects.requireNonNull(name);
  }

  /** A floor of which only the name is known. */
  public static WorkFloor named(String name) {
    return new WorkFloor(name, Optional.empty(), Optional.empty());
  }
}
