package org.coatrun.shared.line;

/** What brings the nozzle to the steel, the simplest first. */
public enum Access {
  /** A person standing on the floor. */
  NOZZLE("nozzle from the floor"),
  /** A pole gun from the floor. */
  POLE_GUN("pole gun from the floor"),
  /** A lift on the floor. */
  LIFT("lift"),
  /** A scaffold, where a lift does not reach. */
  SCAFFOLD("scaffold"),
  /** No floor lies under the steel: a swing stage or other means from above or outside. */
  FROM_OUTSIDE("swing stage or other means, no floor under it");

  private final String words;

  Access(String words) {
    this.words = words;
  }

  /** The same in words. */
  public String words() {
    return words;
  }
}
