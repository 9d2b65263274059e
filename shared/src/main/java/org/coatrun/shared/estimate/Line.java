package org.coatrun.shared.estimate;

import java.util.Comparator;
import java.util.Optional;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Storey;

/** One element's line in the takeoff. */
public sealed interface Line permits MemberLine, DeckLine {

  /** From the lowest storey up, those without one last; then by mark, name, GlobalId, number. */
  Comparator<Line> ORDER =
      Comparator.comparing(
              (Line line) -> line.storey().orElse(null),
              Comparator.nullsLast(
                  Comparator.<Storey>comparingDouble(storey -> storey.elevation().metres())
                      .thenComparing(Storey::name)
                      .thenComparing(Storey::id)))
          .thenComparing(
              Line::identity,
              Comparator.comparing(Identity::mark)
                  .thenComparing(Identity::name)
                  .thenComparing(Identity::guid)
                  .thenComparing(Identity::id));

  Identity identity();

  /** The storey that the model puts it on. */
  Optional<Storey> storey();

  Outcome outcome();

  /** Name of its storey, or empty. */
  default String storeyName() {
    return storey().map(Storey::name).orElse("");
  }
}
