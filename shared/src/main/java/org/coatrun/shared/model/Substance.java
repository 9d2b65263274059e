package org.coatrun.shared.model;

/** What an element is made of, as far as coating is concerned. */
public enum Substance {
  STEEL("steel"),
  CONCRETE("concrete"),
  TIMBER("timber"),
  REINFORCEMENT("reinforcement"),
  GLASS("glass"),
  ALUMINIUM("aluminium"),
  MASONRY("masonry"),
  OTHER("another material"),
  UNKNOWN("unknown material");

  private final String word;

  Substance(String word) {
    this.word = word;
  }

  /** In plain English, for reports. */
  public String word() {
    return word;
  }
}
