package org.coatrun.shared.model;

/**
 * A hole that the model takes out of another element.
 *
 * @param host the element it is taken out of
 * @param fill what fills it
 */
public record Opening(Identity identity, ElementId host, Fill fill, Body body) implements Element {

  /** What fills an opening. */
  public enum Fill {
    NOTHING,
    DOOR,
    WINDOW,
    OTHER
  }
}
