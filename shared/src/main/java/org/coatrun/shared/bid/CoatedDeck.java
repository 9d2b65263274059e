package org.coatrun.shared.bid;

import java.util.Objects;
import java.util.Optional;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.units.Area;

/**
 * A deck that may be coated from below.
 *
 * @param exposed its underside: of the sheet, or of the flat plate where the model draws it flat
 * @param flat whether the model draws it flat, so that the job's profile unfolds it
 * @param concreteAbove whether concrete lies on it
 * @param modelRating the fire rating that the model states, as text
 */
public record CoatedDeck(
    ElementId id,
    String guid,
    String name,
    Place place,
    Area exposed,
    boolean flat,
    boolean concreteAbove,
    Optional<String> modelRating)
    implements Coated {

  static final String WORD = "deck";

  public CoatedDeck {
    Objects.requireNonNull(guid);
    Objects.requireNonNull(name);
    if (exposed.squareMetres() < 0) {
      throw new IllegalArgumentException("a negative area to coat: " + name);
    }
  }

  @Override
  public String kindWord() {
    return WORD;
  }

  @Override
  public String section() {
    return WORD;
  }
}
