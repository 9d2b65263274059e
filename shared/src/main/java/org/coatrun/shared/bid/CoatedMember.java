package org.coatrun.shared.bid;

import java.util.Objects;
import java.util.Optional;
import org.coatrun.shared.frame.FrameClass;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.rules.MemberKind;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.SectionFactor;
import org.coatrun.shared.units.Volume;

/**
 * A steel member to be rated and coated.
 *
 * @param classReason why it is in its class, in one clause
 * @param byWeight the section factor whose W/D is weight over heated perimeter; empty without one
 * @param byArea the section factor by area of steel; empty without one
 * @param fluteBed the part of its top under deck that the model draws flat where flutes run across
 *     it, so that voids stay open between sheet and steel
 * @param fluteVoids voids over it in flutes that the model draws
 * @param voidFlange the part of {@code exposed} that lies under those voids: where they are filled
 *     it takes no coat of its own
 * @param cornerFactor k of P t + k t2, where the section's corners are known
 * @param heated heated perimeter, where it has a section
 * @param compact whether its section is known to be compact
 * @param primed whether the model says that it is primed or painted
 * @param modelRating the fire rating that the model states, as text
 */
public record CoatedMember(
    ElementId id,
    String guid,
    String name,
    Place place,
    Role role,
    MemberKind kind,
    FrameClass frameClass,
    String classReason,
    String section,
    Optional<SectionFactor> byWeight,
    Optional<SectionFactor> byArea,
    Area exposed,
    Area fluteBed,
    Volume fluteVoids,
    Area voidFlange,
    Length length,
    Optional<Length> heated,
    Optional<Double> cornerFactor,
    boolean compact,
    boolean primed,
    Optional<String> modelRating)
    implements Coated {

  public CoatedMember {
    Objects.requireNonNull(guid);
    Objects.requireNonNull(name);
    Objects.requireNonNull(section);
    if (exposed.squareMetres() < 0) {
      throw new IllegalArgumentException("a negative area to coat: " + name);
    }
  }

  /** The part of it that is sprayed from one floor. */
  CoatedMember piece(Place at, double share) {
    return new CoatedMember(
        id,
        guid,
        name,
        at,
        role,
        kind,
        frameClass,
        classReason,
        section,
        byWeight,
        byArea,
        exposed.times(share),
        fluteBed.times(share),
        fluteVoids.times(share),
        voidFlange.times(share),
        length.times(share),
        heated,
        cornerFactor,
        compact,
        primed,
        modelRating);
  }

  @Override
  public String kindWord() {
    return kind.word();
  }
}
