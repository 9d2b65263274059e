package org.coatrun.shared.rules;

/** Kinds of members that listings, waste and rates tell apart. */
public enum MemberKind {
  COLUMN("column"),
  HOLLOW_COLUMN("hollow column"),
  BEAM("beam"),
  BRACE("brace"),
  JOIST("joist"),
  TRUSS("truss"),
  OTHER("other steel");

  private final String word;

  MemberKind(String word) {
    this.word = word;
  }

  /** In plain English, for reports. */
  public String word() {
    return word;
  }

  /** Where on this kind thickness is read. */
  public ReadingPlace readingPlace() {
    return switch (this) {
      case COLUMN -> ReadingPlace.W_COLUMN;
      case HOLLOW_COLUMN -> ReadingPlace.HOLLOW_COLUMN;
      case JOIST, TRUSS -> ReadingPlace.JOIST_OR_TRUSS;
      case BEAM, BRACE, OTHER -> ReadingPlace.BEAM;
    };
  }
}
