package org.coatrun.shared.rules;

/**
 * Part of the primary structural frame, or secondary.
 *
 * <p>Source: IBC 202, primary structural frame: columns; members with direct connections to
 * columns; floor and roof members with direct connections to columns; bracing essential to vertical
 * stability under gravity load. The rest are secondary.
 */
public enum FrameClass {
  PRIMARY("primary frame"),
  SECONDARY("secondary");

  private final String word;

  FrameClass(String word) {
    this.word = word;
  }

  /** In plain English, for reports. */
  public String word() {
    return word;
  }
}
