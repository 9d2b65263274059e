package org.coatrun.shared.model;

/**
 * One reason for taking an element to be of a substance, or a deck.
 *
 * @param source where the model says so
 * @param text the word or name that says so
 */
public record Evidence(Source source, String text) {

  /** Where in a model a hint can stand, weightiest first. */
  public enum Source {
    MATERIAL,
    PROFILE,
    CLASS,
    TYPE_NAME,
    NAME,
    LAYER,
    BODY,
    JOB
  }

  // Written out: see the conventions in DEVELOPERS.md.

  @Override
  public boolean equals(Object other) {
    return other instanceof Evidence o && source == o.source && text.equals(o.text);
  }

  @Override
  public int hashCode() {
    return 31 * source.hashCode() + text.hashCode();
  }
}
