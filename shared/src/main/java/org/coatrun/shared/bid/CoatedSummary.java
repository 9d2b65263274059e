package org.coatrun.shared.bid;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.coatrun.shared.units.Length;

/**
 * What lists say of an element that may be coated, with a job or without.
 *
 * @param kindWord what it is, in a word
 * @param workingFloors names of the floors that it is sprayed from, from the lowest up, each once
 * @param top the most that any piece of it reaches above the floor that the piece is sprayed from
 * @param room name of the room that its middle lies in, or empty
 * @param modelRating the fire rating that the model states, as text
 */
public record CoatedSummary(
    String kindWord,
    List<String> workingFloors,
    Optional<Length> top,
    String room,
    Optional<String> modelRating) {

  public CoatedSummary {
    Objects.requireNonNull(kindWord);
    Objects.requireNonNull(room);
    workingFloors = List.copyOf(workingFloors);
  }

  /** Of an element in the pieces that a bid has of it, from the lowest up. */
  static CoatedSummary of(List<Coated> items) {
    List<WorkingFloors.Piece> pieces = new ArrayList<>();
    for (Coated item : items) {
      Place place = item.place();
      pieces.add(new WorkingFloors.Piece(place.workingFloor(), place.top(), 1));
    }
    Coated lowest = items.get(0);
    return of(lowest.kindWord(), pieces, lowest.place().space(), lowest.modelRating());
  }

  static CoatedSummary of(
      String kindWord, List<WorkingFloors.Piece> pieces, String room, Optional<String> rating) {
    List<String> floors = new ArrayList<>(pieces.size());
    Optional<Length> top = Optional.empty();
    for (WorkingFloors.Piece piece : pieces) {
      if (!floors.contains(piece.floor())) {
        floors.add(piece.floor());
      }
      if (piece.top().isPresent()
          && (top.isEmpty() || piece.top().get().compareTo(top.get()) > 0)) {
        top = piece.top();
      }
    }
    return new CoatedSummary(kindWord, floors, top, room, rating);
  }

  /** The names of its working floors, one after the other. */
  public String floors() {
    return String.join("; ", workingFloors);
  }
}
