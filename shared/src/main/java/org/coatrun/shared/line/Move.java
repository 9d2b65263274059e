package org.coatrun.shared.line;

import java.util.Objects;

/** One step of the work, in order. */
public record Move(int number, Kind kind, String sentence) {

  /** What is done. */
  public enum Kind {
    SET_MACHINE,
    RAISE_RISER,
    SET_OUTLET,
    SPRAY
  }

  public Move {
    Objects.requireNonNull(kind);
    Objects.requireNonNull(sentence);
  }
}
