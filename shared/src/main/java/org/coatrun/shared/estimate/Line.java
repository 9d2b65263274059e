package org.coatrun.shared.estimate;

import java.util.Comparator;
import java.util.Optional;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Storey;

/** One element's line in the takeoff. */
public sealed interface Line permits MemberLine, DeckLine {

  /** From the lowest storey up, those without one last; then by mark, name, GlobalId, number. */
  Comparator<Line> ORDER =
      Comparator.comparing((Line line) -> line.storey().isEmpty())
          .thenComparingDouble(
              line -> line.storey().map(storey -> storey.elevation().metres()).orElse(0.0))
          .thenComparing(line -> line.storey().map(Storey::name).orElse(""))
          .thenComparing(line -> line.storey().map(Storey::id), Line::compareIds)
          .thenComparing(line -> line.identity().mark())
          .thenComparing(line -> line.identity().name())
          .thenComparing(line -> line.identity().guid())
          .thenComparing(line -> line.identity().id());

  Identity identity();

  /** The storey that the model puts it on. */
  Optional<Storey> storey();

  Outcome outcome();

  /** Name of its storey, or empty. */
  default String storeyName() {
    return storey().map(Storey::name).orElse("");
  }

  private static int compareIds(Optional<ElementId> a, Optional<ElementId> b) {
    return a.isPresent() && b.isPresent()
        ? a.get().compareTo(b.get())
        : Boolean.compare(a.isPresent(), b.isPresent());
  }
}
