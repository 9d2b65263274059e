package org.coatrun.shared.estimate;

import java.util.Optional;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Identity;
import org.coatrun.shared.model.Storey;

/** What the takeoff says of one deck. */
public record DeckLine(Deck deck, Optional<Storey> storey, Outcome outcome) implements Line {

  @Override
  public Identity identity() {
    return deck.identity();
  }
}
