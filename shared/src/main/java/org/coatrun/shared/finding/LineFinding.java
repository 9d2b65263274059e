package org.coatrun.shared.finding;

/** What may come up about the line: floors, reach, hose, machine. */
public enum LineFinding implements FindingCode {
  NO_FREE_FLOOR(
      "F501",
      Severity.WARNING,
      "A floor has no area where a person and a hose can go.",
      "Look at its slab, walls and keep-outs; steel over it goes to the next floor below."),
  NO_FLOOR_UNDER(
      "F502",
      Severity.ERROR,
      "Steel to be sprayed has no floor under it.",
      "Plan a lift from the ground, a swing stage or other access, or name the floor in the model."),
  OUT_OF_LINE(
      "F503",
      Severity.ERROR,
      "No line reaches a place of work within the limits.",
      "Name another riser or machine spot in the job file, or allow another machine position."),
  NEEDS_SCAFFOLD(
      "F504",
      Severity.WARNING,
      "Steel stands higher over its floor than a lift reaches.",
      "Plan a scaffold, or state the reach of the lift in the job file."),
  NO_MACHINE_SPOT(
      "F505",
      Severity.ERROR,
      "There is no place for the machine.",
      "Name a spot in the job file, or state how much room machine and bags need."),
  NOT_PROVEN_BEST(
      "F506",
      Severity.NOTE,
      "The search for the best plan stopped before it was proven best.",
      "The gap says how far it may be from the best; allow more search nodes to close it."),
  OVER_RATING(
      "F507",
      Severity.WARNING,
      "By a published rule the line is longer than the machine is rated for.",
      "An indication only: ask the maker of the machine, or move it nearer."),
  BOOSTER_NEEDED(
      "F508",
      Severity.NOTE,
      "The site's water does not give the pressure needed at the nozzle.",
      "Plan a booster pump with a tank."),
  FEEDER_DROP(
      "F509",
      Severity.WARNING,
      "The voltage drop on the feeder is over what the job allows (guidance: 3 %).",
      "Take a larger conductor or a nearer source; electrical work needs a licensed person."),
  SPOT_NOT_FREE(
      "F510",
      Severity.ERROR,
      "A machine spot or riser of the job file has no free floor beside it.",
      "Move it onto free floor; it was left out."),
  ASSUMED_FLOOR(
      "F511",
      Severity.WARNING,
      "The model draws no slab where steel calls for a floor; one was assumed.",
      "Check the outline of that floor, or add the model that holds its slab."),
  FLOOR_PART_UNREAD(
      "F512",
      Severity.WARNING,
      "Something that makes a floor could not be cut, so the floor may be larger or smaller.",
      "Look at the element named, and at the floor where it stands."),
  WALLS_BY_THICKNESS(
      "F513",
      Severity.NOTE,
      "Nothing says what some walls are made of; thick ones were taken to stand before spraying.",
      "Check which walls stand when the floors are sprayed; hose is led around those."),
  NOMINAL_THICKNESS(
      "F514",
      Severity.NOTE,
      "Work without a thickness of its own is planned with a nominal one.",
      "Give a job file with a listing; the line's work is then the bid's."),
  ASSUMED_GROUND(
      "F515",
      Severity.WARNING,
      "No slab has room for the machine; level ground was assumed beside the building.",
      "Check that it is level, drained and firm there, or name a machine spot in the job file.");

  private final String code;
  private final Severity severity;
  private final String meaning;
  private final String remedy;

  LineFinding(String code, Severity severity, String meaning, String remedy) {
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
