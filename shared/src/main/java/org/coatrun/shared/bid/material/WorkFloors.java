package org.coatrun.shared.bid.material;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.shared.bid.CoatedDeck;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.model.Storey;
import org.coatrun.shared.units.Area;

/** The floors of a building as the crew works on them. */
public final class WorkFloors {

  private WorkFloors() {}

  /**
   * A floor for each storey. Its area is that of the deck over it, sprayed or not; a floor without
   * deck over it has none. Deck that is drawn with its flutes counts unfolded, so that samples are
   * never too few.
   */
  public static List<WorkFloor> of(Collection<Storey> storeys, Collection<RatedLine> lines) {
    Map<String, Area> decks = new LinkedHashMap<>();
    for (RatedLine line : lines) {
      if (line.item() instanceof CoatedDeck deck) {
        decks.merge(deck.place().workingFloor(), deck.exposed(), Area::plus);
      }
    }
    return storeys.stream()
        .map(
            s ->
                new WorkFloor(
                    s.name(), Optional.of(s.elevation()), Optional.ofNullable(decks.get(s.name()))))
        .toList();
  }
}
