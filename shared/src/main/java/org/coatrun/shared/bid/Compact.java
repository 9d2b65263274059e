package org.coatrun.shared.bid;

import java.util.Optional;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.rules.Compactness;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Pressure;

/**
 * Whether a member's section is known to be compact: an I whose profile the model states, at a
 * yield strength of 50 ksi, that of ASTM A992 and the highest of common building steel. Other
 * sections are not known to be.
 */
final class Compact {

  /** Yield strength of ASTM A992, 50 ksi; less steel would be compact sooner. */
  static final Pressure YIELD = Pressure.ofPsi(50_000);

  private Compact() {}

  static boolean of(Member member) {
    return member.body().isPresent()
        && profile(member.body().shape()).map(Compact::isCompact).orElse(false);
  }

  private static boolean isCompact(Profile.IShape i) {
    double clear = i.depth() - 2 * (i.flange() + i.fillet().orElse(0));
    return i.flange() > 0
        && i.web() > 0
        && Compactness.isCompact(
            Length.ofMetres(i.width()),
            Length.ofMetres(i.flange()),
            Length.ofMetres(clear),
            Length.ofMetres(i.web()),
            YIELD);
  }

  /** The profile of the first sweep, which cuts take from. */
  private static Optional<Profile.IShape> profile(Shape shape) {
    Shape at = shape;
    while (true) {
      if (at instanceof Shape.Placed p) {
        at = p.of();
      } else if (at instanceof Shape.Combination c) {
        at = c.first();
      } else if (at instanceof Shape.Compound c && c.items().size() == 1) {
        at = c.items().get(0);
      } else {
        return at instanceof Shape.Extrusion e ? iShape(e.profile()) : Optional.empty();
      }
    }
  }

  // A profile that is only moved or turned in its plane keeps its sizes.
  private static Optional<Profile.IShape> iShape(Profile profile) {
    return profile instanceof Profile.IShape i ? Optional.of(i) : Optional.empty();
  }
}
