package org.coatrun.shared.estimate;

/** In which of three columns an element ends; it always ends in one. */
public enum Status {
  /** Steel or deck, measured. */
  COUNTED("counted"),
  /** Nothing to coat: of another material, or a fastener. */
  LEFT_OUT("left out"),
  /** It may need coating, but could not be measured or judged. */
  UNRESOLVED("unresolved");

  private final String word;

  Status(String word) {
    this.word = word;
  }

  /** The word that reports use. */
  public String word() {
    return word;
  }
}
