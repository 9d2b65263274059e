package org.coatrun.shared.finding;

/** What can be amiss with a model: units, places, structure, what elements are and are made of. */
public enum ModelFinding implements FindingCode {
  NO_LENGTH_UNIT(
      "F201",
      Severity.ERROR,
      "The model states no unit of length; metres were assumed.",
      "Ask for a model with its units, and compare one known length before you use the numbers."),
  UNKNOWN_UNIT(
      "F202",
      Severity.WARNING,
      "A unit could not be understood; the SI unit was assumed in its place.",
      "Compare a known value, and have the model exported again with its units defined."),
  BROKEN_RECORD(
      "F203",
      Severity.ERROR,
      "A record that something depends on is missing or makes no sense.",
      "Have the model exported again, or measure the element named by hand."),
  UNKNOWN_ENTITY(
      "F204",
      Severity.NOTE,
      "The file holds a kind of record that no schema defines that is read; it was passed over.",
      "Nothing, unless the elements concerned are steel: then ask for a standard export."),
  OTHER_SCHEMA_ENTITY(
      "F205",
      Severity.NOTE,
      "The file holds a kind of record that belongs to another schema; it was read by that one.",
      "Nothing; tell the author of the model if numbers look odd."),
  BROKEN_PLACEMENT(
      "F206",
      Severity.ERROR,
      "A placement refers to itself, or to something that is no placement.",
      "Have the model exported again; what stands by that placement is not measured."),
  LINEAR_PLACEMENT(
      "F207",
      Severity.WARNING,
      "An element is placed along an alignment, which is not followed.",
      "Check where the element named stands; its own surface is right, its contacts may not be."),
  NO_STOREY(
      "F208",
      Severity.WARNING,
      "Steel stands in no storey of the model.",
      "Have the model put it in one; rules of the job file can still name it by zone, section or mark."),
  STRUCTURE_CYCLE(
      "F209",
      Severity.ERROR,
      "A whole is among its own parts.",
      "Have the model exported again; the elements named were read as if they had no whole."),
  DOUBLE_GUID(
      "F210",
      Severity.WARNING,
      "Two elements of a file bear the same GlobalId; both were counted.",
      "See whether one is a copy of the other; rules by GlobalId reach both."),
  SAME_ELEMENT_IN_FILES(
      "F211",
      Severity.NOTE,
      "An element stands in several files; it was counted once, from the first.",
      "Nothing, if the files are parts of one building."),
  MALFORMED_GUID(
      "F212",
      Severity.NOTE,
      "A GlobalId is not formed as the standard says.",
      "Nothing; refer to the element by its number in the file."),
  CONTRADICTORY_QUANTITY(
      "F213",
      Severity.WARNING,
      "Two quantity sets of an element give different values for one quantity; neither was used.",
      "Nothing for the takeoff, which measures the body; do not trust that quantity."),
  STOREY_HEIGHT(
      "F214",
      Severity.WARNING,
      "A storey's stated elevation and its place in the model disagree; the place was used.",
      "Compare the elevation with the drawings."),
  NO_BODY(
      "F215",
      Severity.ERROR,
      "A member has no body in the model, so it has no surface to measure.",
      "Ask for an export with bodies, or take the member off by hand."),
  WHOLE_AND_PARTS(
      "F216",
      Severity.WARNING,
      "A whole has a body of its own and so have its parts; the parts were counted.",
      "Check that the whole's body holds nothing that its parts do not."),
  NOT_LOOKED_AT(
      "F217",
      Severity.NOTE,
      "Elements of a kind that is structural steel only now and then show no sign of being so, and"
          + " were left out.",
      "Look through the kinds named; where some are steel to be coated, have the model say so."),
  UNKNOWN_SUBSTANCE(
      "F218",
      Severity.WARNING,
      "Nothing in the model says what a member is made of.",
      "Say under substances in the job file whether it is steel."),
  NEAREST_SCHEMA(
      "F219",
      Severity.NOTE,
      "The file's schema has no table of its own; the nearest one was used.",
      "Nothing, unless numbers look odd: then ask for IFC2X3, IFC4 or IFC4X3."),
  NO_STOREYS(
      "F220",
      Severity.WARNING,
      "The model has no storeys.",
      "Ask for a model with storeys; until then floors are told by slabs alone."),
  SEVERAL_BODIES(
      "F221",
      Severity.NOTE,
      "An element has several bodies that stand for one thing; the most detailed was used.",
      "Nothing."),
  WRONG_SIZE(
      "F222",
      Severity.WARNING,
      "Records of a kind have more or fewer attributes than their schema defines.",
      "Nothing, if the numbers look right; else have the model exported again."),
  FAR_FROM_ORIGIN(
      "F223",
      Severity.NOTE,
      "The model stands far from its origin; a common shift was taken off all coordinates.",
      "Nothing."),
  CONTRADICTORY_MATERIAL(
      "F224",
      Severity.WARNING,
      "An element's materials name steel and something else; it was taken for steel.",
      "Say under substances in the job file where it is not."),
  OPENING_WITHOUT_HOST(
      "F225",
      Severity.NOTE,
      "An opening cuts nothing: no element is named that it belongs to.",
      "Nothing."),
  TYPES_ONLY(
      "F226",
      Severity.NOTE,
      "The file holds types or an analysis model, but no elements with bodies.",
      "Ask for the model of the building itself.");

  private final String code;
  private final Severity severity;
  private final String meaning;
  private final String remedy;

  ModelFinding(String code, Severity severity, String meaning, String remedy) {
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
