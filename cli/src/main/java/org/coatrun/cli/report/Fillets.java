package org.coatrun.cli.report;

import java.util.Optional;
import java.util.OptionalDouble;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Shape;

/** Whether a rolled section comes without its root fillets. */
final class Fillets {

  private Fillets() {}

  /** Whether a profile of this shape should have fillet radii and has none. */
  static boolean areMissing(Shape shape) {
    if (shape instanceof Shape.Compound compound) {
      return compound.items().stream().anyMatch(Fillets::areMissing);
    }
    if (shape instanceof Shape.Combination combination) {
      return areMissing(combination.first());
    }
    if (shape instanceof Shape.Placed placed) {
      return areMissing(placed.of());
    }
    return profile(shape).filter(Fillets::lacks).isPresent();
  }

  private static Optional<Profile> profile(Shape shape) {
    if (shape instanceof Shape.Extrusion swept) {
      return Optional.of(swept.profile());
    }
    if (shape instanceof Shape.TaperedExtrusion swept) {
      return Optional.of(swept.start());
    }
    if (shape instanceof Shape.Revolution swept) {
      return Optional.of(swept.profile());
    }
    if (shape instanceof Shape.TaperedRevolution swept) {
      return Optional.of(swept.start());
    }
    return shape instanceof Shape.Sweep swept ? Optional.of(swept.profile()) : Optional.empty();
  }

  private static boolean lacks(Profile profile) {
    if (profile instanceof Profile.Placed placed) {
      return lacks(placed.of());
    }
    if (profile instanceof Profile.Composite composite) {
      return composite.parts().stream().anyMatch(Fillets::lacks);
    }
    if (profile instanceof Profile.AsymmetricI i) {
      return i.bottom().fillet().isEmpty() || i.top().fillet().isEmpty();
    }
    return rolled(profile).filter(OptionalDouble::isEmpty).isPresent();
  }

  private static Optional<OptionalDouble> rolled(Profile profile) {
    if (profile instanceof Profile.IShape i) {
      return Optional.of(i.fillet());
    }
    if (profile instanceof Profile.UShape u) {
      return Optional.of(u.fillet());
    }
    if (profile instanceof Profile.LShape l) {
      return Optional.of(l.fillet());
    }
    return profile instanceof Profile.TShape t ? Optional.of(t.fillet()) : Optional.empty();
  }
}
