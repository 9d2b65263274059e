package org.coatrun.shared.bid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.coatrun.shared.estimate.DeckLine;
import org.coatrun.shared.estimate.Line;
import org.coatrun.shared.estimate.MemberLine;
import org.coatrun.shared.estimate.Takeoff;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.rules.MemberKind;
import org.coatrun.shared.surface.Standing;
import org.coatrun.shared.surface.Surfaces;

/**
 * What lists say of all that may be coated. Without a job that is far less than a bid asks for:
 * nothing of what carries what, of roofs, section factors and paint.
 */
public final class CoatedSummaries {

  private final Surfaces surfaces;
  private final WorkingFloors floors;
  private final Map<ElementId, CoatedSummary> all;

  private CoatedSummaries(Takeoff takeoff) {
    surfaces = takeoff.surfaces();
    floors = new WorkingFloors(takeoff.building());
    all = new ConcurrentHashMap<>(takeoff.members().size() + takeoff.decks().size());
  }

  /** By element, without a job; what has no face to coat is missing. */
  public static Map<ElementId, CoatedSummary> of(Takeoff takeoff) {
    CoatedSummaries summaries = new CoatedSummaries(takeoff);
    // Side by side, since ratings are still to be read from the model.
    takeoff.members().parallelStream().forEach(summaries::add);
    takeoff.decks().forEach(summaries::add);
    return summaries.all;
  }

  /** By element, of all that is bid on. */
  public static Map<ElementId, CoatedSummary> of(Bid bid) {
    Map<ElementId, List<Coated>> items = new HashMap<>();
    for (RatedLine line : bid.lines()) {
      items.computeIfAbsent(line.item().id(), id -> new ArrayList<>()).add(line.item());
    }
    Map<ElementId, CoatedSummary> summaries = new HashMap<>();
    items.forEach((id, pieces) -> summaries.put(id, CoatedSummary.of(pieces)));
    return summaries;
  }

  private void add(MemberLine line) {
    Coatables.quantities(line)
        .map(q -> MemberKinds.of(line, q))
        .ifPresent(kind -> add(line, kind, kind.word(), RatingText.of(line.member().properties())));
  }

  private void add(DeckLine line) {
    if (Coatables.quantities(line).isPresent()) {
      add(line, MemberKind.OTHER, CoatedDeck.WORD, RatingText.of(line.deck().properties()));
    }
  }

  private void add(Line line, MemberKind kind, String word, Optional<String> rating) {
    ElementId id = line.identity().id();
    Optional<Standing> standing = surfaces.standing(id);
    List<WorkingFloors.Piece> pieces = floors.pieces(kind, standing, floors.whole(line, standing));
    all.put(id, CoatedSummary.of(word, pieces, floors.room(standing), rating));
  }
}
