package org.coatrun.shared.bid;

import java.util.Objects;

/**
 * A member or deck with what was decided for it.
 *
 * @param ruling its hours, and what decided them
 * @param thickness what is to be sprayed on it, or why nothing is
 */
public record RatedLine(Coated item, Ruling ruling, Thickness thickness) {

  public RatedLine {
    Objects.requireNonNull(item);
    Objects.requireNonNull(ruling);
    Objects.requireNonNull(thickness);
  }
}
