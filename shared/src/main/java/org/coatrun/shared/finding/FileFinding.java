package org.coatrun.shared.finding;

/** Findings about a model file as a file, whatever it models. */
public enum FileFinding implements FindingCode {
  TRUNCATED(
      "F101",
      Severity.ERROR,
      "The file ends before its end mark; what stands before the cut was read.",
      "Export or copy the file again; the numbers cover only a part of the model."),
  BAD_RECORD(
      "F102",
      Severity.ERROR,
      "A record cannot be read and is left out.",
      "Look at the line that is named, or export the model again."),
  BAD_VALUE(
      "F103",
      Severity.ERROR,
      "One value of a record cannot be read; the rest of the record is used.",
      "Look at the line that is named, or export the model again."),
  DUPLICATE_ID(
      "F104",
      Severity.ERROR,
      "Two records carry the same number; the first one stands.",
      "Export the model again; what refers to the second record now means the first."),
  DANGLING_REFERENCE(
      "F105",
      Severity.ERROR,
      "A record refers to a number that no record carries.",
      "Export the model again; what the reference should add is missing."),
  BAD_TEXT(
      "F106",
      Severity.WARNING,
      "An escape in a text is not valid; the text is kept as it stands there.",
      "Check names and marks that come from this text."),
  UNTERMINATED_TEXT(
      "F107",
      Severity.ERROR,
      "A text is not closed before the next record begins.",
      "Look at the line that is named; the record ends where the next one begins."),
  FOREIGN_TEXT(
      "F108",
      Severity.NOTE,
      "A text is not UTF-8; it was read as Windows-1252.",
      "Check accented letters in names and marks."),
  NOT_A_NUMBER(
      "F109",
      Severity.ERROR,
      "A number is not finite; it counts as not given.",
      "Look at the element in the authoring program; its geometry may be broken."),
  MISSING_SEMICOLON(
      "F110",
      Severity.WARNING,
      "A record is not closed by a semicolon before the next one begins.",
      "Usually harmless; export the model again if elements are missing."),
  STRAY_TEXT(
      "F111",
      Severity.WARNING,
      "Text stands where a record should; it is left out.",
      "Look at the line that is named."),
  BAD_HEADER(
      "F112",
      Severity.WARNING,
      "The header of the file is incomplete or not in order.",
      "Usually harmless; the model itself is read."),
  COMPLEX_RECORD(
      "F113",
      Severity.NOTE,
      "A record names several entities at once, which building models do not do.",
      "Look at the line that is named; the record is not used."),
  AFTER_END(
      "F114",
      Severity.WARNING,
      "Something stands behind the end mark of the file; it is left out.",
      "Check whether two files were joined into one."),
  NO_RECORDS("F115", Severity.ERROR, "The file holds no records.", "Export the model again."),
  ZERO_ID(
      "F116",
      Severity.NOTE,
      "A record carries the number 0, which the standard does not allow; it is read.",
      "Nothing to do."),
  MORE_OF_THE_SAME(
      "F117",
      Severity.NOTE,
      "There are more findings of one kind than are listed.",
      "Export the model again; so many faults of one kind have one cause."),
  OPEN_SECTION(
      "F118",
      Severity.WARNING,
      "A section of the file is not closed.",
      "Usually harmless; check whether elements are missing.");

  private final String code;
  private final Severity severity;
  private final String meaning;
  private final String remedy;

  FileFinding(String code, Severity severity, String meaning, String remedy) {
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
