package org.coatrun.shared.finding;

/** Findings about surfaces and sections: F3xx. */
public enum SurfaceFinding implements FindingCode {
  /** A kind of shape that is not handled. */
  SHAPE_NOT_HANDLED(
      "F301",
      Severity.ERROR,
      "The body is of a kind that the program does not measure, or cannot be read.",
      "Measure this element by hand, or export it as a swept solid or a closed mesh."),
  /** A section that cannot be. */
  IMPOSSIBLE_SECTION(
      "F302",
      Severity.ERROR,
      "The section has dimensions that no section can have.",
      "Correct the profile in the model, or measure this element by hand."),
  /** No body. */
  NO_BODY(
      "F303",
      Severity.ERROR,
      "The model gives no body for this element or any part of it.",
      "Export the element with its body, or measure it by hand."),
  /** Faces that enclose nothing. */
  OPEN_SHELL(
      "F304",
      Severity.WARNING,
      "The faces of the body do not close: its area counts, but volume and contact are unknown.",
      "Check the element's surface; weight and covered area may be off."),
  /** Radii that were left out. */
  RADII_LEFT_OUT(
      "F305",
      Severity.WARNING,
      "The corner radii of the section have no room and were left out.",
      "Check the profile; the perimeter is that of sharp corners."),
  /** A body without an area. */
  EMPTY_BODY(
      "F306",
      Severity.ERROR,
      "The body has no surface.",
      "Check the element's dimensions, or measure it by hand."),
  /** A body that could not be measured. */
  NOT_MEASURED(
      "F307",
      Severity.ERROR,
      "The body could not be measured.",
      "Measure this element by hand, and report the model to the program's makers."),
  /** An opening beside its host. */
  IDLE_OPENING(
      "F308",
      Severity.NOTE,
      "An opening cuts nothing of the element that it belongs to.",
      "Look whether it was displaced; the element is measured whole there."),
  /** A cut that leaves much less than the model says there is. */
  SHORT_PIECE(
      "F309",
      Severity.WARNING,
      "What a cut leaves is less than half as long as the model states; it may be the offcut.",
      "Look which side of the cut is the member, and measure it by hand if it is the other."),
  /** An outline whose parts do not follow each other as they are flagged. */
  PIECES_TURNED(
      "F310",
      Severity.NOTE,
      "Parts of the section's outline are flagged to run the wrong way; they were turned round.",
      "Nothing, unless the section looks wrong."),
  /** A body that refers to itself. */
  ENDLESS_BODY(
      "F311",
      Severity.ERROR,
      "The body refers to itself, or is nested or repeated beyond what the program follows.",
      "Measure this element by hand, or have the model exported again."),
  /** An outline whose inside is not told by its area. */
  CROSSED_OUTLINE(
      "F312",
      Severity.WARNING,
      "The outline of a section or of a face crosses itself, so its area is in doubt.",
      "Correct it in the model, or measure this element by hand.");

  private final String code;
  private final Severity severity;
  private final String meaning;
  private final String remedy;

  SurfaceFinding(String code, Severity severity, String meaning, String remedy) {
    this.code = code;
    this.severity = severity;
    this.meaning = meaning;
    this.remedy = remedy;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public Severity severity() {
    return severity;
  }

  @Override
  public String meaning() {
    return meaning;
  }

  @Override
  public String remedy() {
    return remedy;
  }
}
