package org.coatrun.shared.bid;

import java.util.Optional;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.units.Area;

/** A steel member or a deck as the bid sees it. */
public sealed interface Coated permits CoatedMember, CoatedDeck {

  ElementId id();

  /** GlobalId, or empty. */
  String guid();

  /** Mark or name, or empty. */
  String name();

  /** Where it is. */
  Place place();

  /** Area to be coated, attachments not included. */
  Area exposed();

  /** What it is, in a word for reports. */
  String kindWord();

  /** Designation of its section, or {@code deck}, or empty. */
  String section();

  /** The fire rating that the model states, as text. */
  Optional<String> modelRating();

  /** What to call it in a sentence. */
  default String called() {
    String known = name().isEmpty() ? guid() : name();
    return kindWord() + " " + (known.isEmpty() ? "#" + id().step() : known);
  }
}
