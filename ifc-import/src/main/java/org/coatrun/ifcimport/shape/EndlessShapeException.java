package org.coatrun.ifcimport.shape;

/** A body, profile or curve beyond the limits of {@link Depth}; never leaves the package. */
final class EndlessShapeException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  EndlessShapeException() {
    super(
        "it refers to itself, is nested more than "
            + Depth.MOST
            + " deep, or holds more than "
            + Depth.MOST_ITEMS
            + " items");
  }
}
