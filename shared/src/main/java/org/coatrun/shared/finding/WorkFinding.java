package org.coatrun.shared.finding;

/** What may come up with ratings, thickness, material and programme. */
public enum WorkFinding implements FindingCode {
  TYPE_NOT_STATED(
      "F401",
      Severity.WARNING,
      "The job file states no construction type, and no rule states the hours.",
      "State building.type; until then the hours of type I-A, the highest, are used."),
  NO_HOURS(
      "F402",
      Severity.ERROR,
      "Neither the table nor a rule states hours for an element.",
      "State its hours by a rule in the job file; until then it has no thickness."),
  CLASS_UNKNOWN(
      "F403",
      Severity.WARNING,
      "The model does not show whether a member is of the primary frame.",
      "Look at how it is connected, or state its hours by a rule; it is rated as primary."),
  RATING_DIFFERS(
      "F404",
      Severity.NOTE,
      "The model states a fire rating that is not the one used.",
      "Find out which is right; the hours of the job file and the code are used."),
  SUPPORT_RATED_LOWER(
      "F405",
      Severity.WARNING,
      "A member has fewer hours than one that it supports.",
      "Raise its hours by a rule, or have the engineer confirm them."),
  OUTSIDE_TESTED_RANGE(
      "F406",
      Severity.ERROR,
      "The section factor of a member lies outside what the listing was tested for.",
      "Find a listing that covers it, or state the thickness by a rule; it has no thickness."),
  NO_LISTING_ENTRY(
      "F407",
      Severity.ERROR,
      "No listing has an entry for this kind of member and rating.",
      "Add a listing to the job file, or state the thickness by a rule; it has no thickness."),
  NO_SECTION_FACTOR(
      "F408",
      Severity.ERROR,
      "A member to be coated has no section factor.",
      "State thickness.without-factor or a rule; until then it has no thickness."),
  SUBSTITUTION_REFUSED(
      "F409",
      Severity.ERROR,
      "Beam substitution is not allowed for a member.",
      "Find a tested beam or table that covers it; it has no thickness."),
  ABOVE_HEIGHT_BANDS(
      "F410",
      Severity.WARNING,
      "Steel lies higher above its working floor than the last height band.",
      "Add a band to labour.bands; the last band is used."),
  HEIGHT_UNKNOWN(
      "F411",
      Severity.WARNING,
      "How high an element lies above its working floor is not known.",
      "Look at its storey in the model; the first height band is used."),
  BONDING_COAT(
      "F412",
      Severity.NOTE,
      "Sprayed galvanised deck takes a bonding coat first.",
      "Check that the listing accepts the bonding coat; it is in the quantities."),
  PRIMED_STEEL(
      "F413",
      Severity.WARNING,
      "Steel is primed or painted.",
      "Check that the listing accepts the primer, or have bond tested (IBC 704.13.3.2)."),
  PRICE_MISSING(
      "F414", Severity.NOTE, "A price is not stated and counts as zero.", "State it under prices."),
  LISTING_DENSITY(
      "F415",
      Severity.WARNING,
      "The density in place of the job is under the least that the listing was tested at.",
      "Raise material.density, or use a listing for that material."),
  STORAGE_TOO_SMALL(
      "F416",
      Severity.ERROR,
      "The storage room does not hold the bags of one working day.",
      "Give more room in programme.storage, or lower the rate."),
  SHELF_LIFE(
      "F417",
      Severity.WARNING,
      "Bags would be kept longer than they keep.",
      "Order later or in smaller lots."),
  COLD_DAY(
      "F418",
      Severity.WARNING,
      "A working day lies too near to temperatures under the least allowed.",
      "Heat the space, or move the work."),
  TEMPERATURES_MISSING(
      "F419",
      Severity.NOTE,
      "The temperature file does not reach over a working day and the hours around it.",
      "Give temperatures for the whole programme."),
  DEMONSTRATION(
      "F420",
      Severity.WARNING,
      "Thickness comes from a demonstration listing with invented numbers.",
      "Use a tested listing for any real work."),
  RULE_UNUSED(
      "F421",
      Severity.WARNING,
      "A rule of the job file matches nothing.",
      "Check its selectors against the names in the model."),
  RATING_UNREADABLE(
      "F422",
      Severity.NOTE,
      "The model states a fire rating that cannot be read as hours or minutes.",
      "Read it yourself and state the hours by a rule."),
  ORDER_UNKNOWN(
      "F423",
      Severity.WARNING,
      "The order of floors names a floor that there is not.",
      "Check programme.order against the names in the model; the name is passed over."),
  PROGRAMME_TOO_LONG(
      "F424",
      Severity.WARNING,
      "The programme is too long to be laid out day by day.",
      "Check rates, crew and machines; days and deliveries are not listed.");

  private final String code;
  private final Severity severity;
  private final String meaning;
  private final String remedy;

  WorkFinding(String code, Severity severity, String meaning, String remedy) {
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
