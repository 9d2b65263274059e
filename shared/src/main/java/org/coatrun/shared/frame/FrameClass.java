package org.coatrun.shared.frame;

/** Where a member belongs by IBC section 202, "primary structural frame" and "secondary". */
public enum FrameClass {
  PRIMARY("primary"),
  SECONDARY("secondary"),
  /** The model shows no column that it could hang from, or no body to tell by. */
  UNKNOWN("unknown");

  private final String word;

  FrameClass(String word) {
    this.word = word;
  }

  /** In plain English, for reports. */
  public String word() {
    return word;
  }
}
