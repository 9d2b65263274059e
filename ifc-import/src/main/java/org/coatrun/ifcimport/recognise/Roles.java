package org.coatrun.ifcimport.recognise;

import java.util.Optional;
import org.coatrun.shared.model.Role;

/** What an element does in the frame, from its class, its predefined type and its names. */
final class Roles {

  private static final WordList WORDS = WordList.read("roles.txt");

  private Roles() {}

  static Role of(Description d) {
    Role byType = byPredefined(d.predefined());
    if (byType != Role.OTHER) {
      return byType;
    }
    Role byClass = byClass(d);
    if (byClass == Role.COLUMN || byClass == Role.PLATE || byClass == Role.FASTENER) {
      return byClass;
    }
    return find(d.names()).orElse(byClass);
  }

  /** The role that a name says. */
  static Optional<Role> find(String names) {
    return WORDS.find(names).map(hit -> Role.valueOf(hit.heading()));
  }

  private static Role byPredefined(String predefined) {
    return switch (predefined) {
      case "BRACE" -> Role.BRACE;
      case "JOIST" -> Role.JOIST;
      case "CHORD" -> Role.TRUSS;
      case "RAFTER" -> Role.RAFTER;
      case "PURLIN" -> Role.PURLIN;
      case "STUD" -> Role.STUD;
      case "POST", "COLUMN" -> Role.COLUMN;
      case "PLATE" -> Role.PLATE;
      default -> Role.OTHER;
    };
  }

  private static Role byClass(Description d) {
    return switch (d.entity().replace("StandardCase", "")) {
      case "IfcBeam" -> Role.BEAM;
      case "IfcColumn" -> Role.COLUMN;
      case "IfcMember" -> Role.MEMBER;
      case "IfcPlate" -> Role.PLATE;
      case "IfcDiscreteAccessory", "IfcFastener", "IfcMechanicalFastener" -> Role.FASTENER;
      default -> Role.OTHER;
    };
  }
}
