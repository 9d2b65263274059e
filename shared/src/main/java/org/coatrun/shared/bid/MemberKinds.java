package org.coatrun.shared.bid;

import org.coatrun.shared.estimate.MemberLine;
import org.coatrun.shared.estimate.Quantities;
import org.coatrun.shared.frame.FrameClass;
import org.coatrun.shared.frame.FrameMember;
import org.coatrun.shared.frame.FramePart;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.SectionDesignation;
import org.coatrun.shared.rules.MemberKind;

/** Of which kind a member is for listings, waste and rates. */
final class MemberKinds {

  private MemberKinds() {}

  /** By its part in the frame; purlins and rafters that meet no column count as joists. */
  static MemberKind of(MemberLine line, Quantities q) {
    FramePart part = line.frame().map(FrameMember::part).orElseGet(() -> byRole(line));
    Role role = line.member().role();
    return switch (part) {
      case COLUMN -> isHollow(line, q) ? MemberKind.HOLLOW_COLUMN : MemberKind.COLUMN;
      case TRUSS -> MemberKind.TRUSS;
      case JOIST -> MemberKind.JOIST;
      case BRACE -> MemberKind.BRACE;
      case GIRDER, BEAM -> isLight(role) && !isPrimary(line) ? MemberKind.JOIST : MemberKind.BEAM;
      case PLATE -> MemberKind.OTHER;
      case OTHER -> isLight(role) ? MemberKind.JOIST : MemberKind.OTHER;
    };
  }

  private static boolean isLight(Role role) {
    return role == Role.PURLIN || role == Role.RAFTER;
  }

  private static boolean isPrimary(MemberLine line) {
    return line.frame().map(f -> f.frameClass() == FrameClass.PRIMARY).orElse(false);
  }

  private static boolean isHollow(MemberLine line, Quantities q) {
    boolean named =
        SectionDesignation.find(line.member().section().name())
            .map(SectionDesignation::family)
            .map(
                f ->
                    f == SectionDesignation.Family.HOLLOW
                        || f == SectionDesignation.Family.ROUND_HOLLOW)
            .orElse(false);
    return named || q.ledger().inside().squareMetres() > 0;
  }

  private static FramePart byRole(MemberLine line) {
    return switch (line.member().role()) {
      case COLUMN -> FramePart.COLUMN;
      case BEAM -> FramePart.BEAM;
      case BRACE -> FramePart.BRACE;
      case JOIST -> FramePart.JOIST;
      case TRUSS -> FramePart.TRUSS;
      case PLATE -> FramePart.PLATE;
      case RAFTER, PURLIN, STUD, MEMBER, FASTENER, OTHER -> FramePart.OTHER;
    };
  }
}
