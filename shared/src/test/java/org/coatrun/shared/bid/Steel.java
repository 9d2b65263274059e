package org.coatrun.shared.bid;

import java.util.Optional;
import org.coatrun.shared.frame.FrameClass;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.rules.MemberKind;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.SectionFactor;
import org.coatrun.shared.units.Volume;

/** Members and decks made by hand, unnamed things at their plainest. */
record Steel(
    long step,
    String name,
    String section,
    MemberKind kind,
    FrameClass frameClass,
    Place place,
    Optional<SectionFactor> factor,
    boolean compact) {

  static Steel beam(long step, String section) {
    return new Steel(
        step,
        "B" + step,
        section,
        MemberKind.BEAM,
        FrameClass.SECONDARY,
        Place.onStorey("Level 2"),
        Optional.empty(),
        false);
  }

  static Steel column(long step, String section) {
    return new Steel(
        step,
        "C" + step,
        section,
        MemberKind.COLUMN,
        FrameClass.PRIMARY,
        Place.onStorey("Level 1"),
        Optional.empty(),
        false);
  }

  Steel as(MemberKind other) {
    return new Steel(step, name, section, other, frameClass, place, factor, compact);
  }

  Steel of(FrameClass other) {
    return new Steel(step, name, section, kind, other, place, factor, compact);
  }

  Steel at(Place other) {
    return new Steel(step, name, section, kind, frameClass, other, factor, compact);
  }

  Steel weightOverPerimeter(double wd) {
    return by(SectionFactor.ofWeightOverPerimeter(wd));
  }

  Steel by(SectionFactor f) {
    return new Steel(step, name, section, kind, frameClass, place, Optional.of(f), compact);
  }

  Steel compactSection() {
    return new Steel(step, name, section, kind, frameClass, place, factor, true);
  }

  CoatedMember member() {
    return member(/* primed= */ false, Optional.empty());
  }

  CoatedMember member(boolean primed, Optional<String> modelRating) {
    return new CoatedMember(
        new ElementId(0, step),
        "guid" + step,
        name,
        place,
        kind == MemberKind.COLUMN || kind == MemberKind.HOLLOW_COLUMN ? Role.COLUMN : Role.BEAM,
        kind,
        frameClass,
        "made by hand",
        section,
        factor,
        factor,
        Area.ofSquareMetres(10),
        Area.ZERO,
        Volume.ZERO,
        Area.ZERO,
        Length.ofMetres(6),
        Optional.empty(),
        Optional.empty(),
        compact,
        primed,
        modelRating);
  }

  static CoatedDeck deck(long step, String name, boolean roof) {
    return new CoatedDeck(
        new ElementId(0, step),
        "guid" + step,
        name,
        place(roof, "", new Vec2(3, 3)),
        Area.ofSquareMetres(50),
        false,
        true,
        Optional.empty());
  }

  static Place place(boolean roof, String room, Vec2 middle) {
    return new Place(
        "Level 2",
        "Level 1",
        Optional.of(middle),
        room,
        Optional.of(Length.ofMetres(4)),
        roof,
        roof,
        roof ? Optional.of(Length.ofFeet(12)) : Optional.empty());
  }
}
