package org.coatrun.shared.finding;

/** What may come up when the takeoff is put together from the model and what was measured. */
public enum LedgerFinding implements FindingCode {
  NOT_MEASURED(
      "F380",
      Severity.ERROR,
      "An element that may need coating was not measured.",
      "Look at its body in the model; it is not in the numbers."),
  WEIGHT_DISAGREES(
      "F381",
      Severity.WARNING,
      "The weight that a designation states and the weight of the drawn section are more than 3 %"
          + " apart.",
      "Find out which is right, the name or the drawing. The nominal weight is used, unless they"
          + " are more than 25 % apart: then the drawn one is."),

  /** One piece of steel twice. */
  DOUBLED(
      "F382",
      Severity.WARNING,
      "The model holds one piece of steel twice, whole and cut or plainly copied.",
      "Only one of the two is counted. Take the other out of the model, or say which is right.");

  private final String code;
  private final Severity severity;
  private final String meaning;
  private final String remedy;

  LedgerFinding(String code, Severity severity, String meaning, String remedy) {
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
