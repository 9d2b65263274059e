package org.coatrun.shared.frame;

/** What a piece of steel does in the frame, as its place and its connections show. */
public enum FramePart {
  COLUMN("column"),
  GIRDER("girder"),
  BEAM("beam"),
  BRACE("brace"),
  JOIST("joist"),
  TRUSS("truss element"),
  PLATE("plate"),
  OTHER("member");

  private final String word;

  FramePart(String word) {
    this.word = word;
  }

  /** In plain English, for reports. */
  public String word() {
    return word;
  }
}
