package org.coatrun.shared.bid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.surface.Standing;
import org.coatrun.shared.units.Length;

/** Cuts a column that passes floors into the pieces that are sprayed from each. */
final class FloorPieces {

  private final PlaceFinder places;

  FloorPieces(PlaceFinder places) {
    this.places = places;
  }

  /**
   * The pieces of a column, from the lowest up; area and length go by the height of each. A member
   * that passes no floor stays whole.
   */
  List<CoatedMember> of(CoatedMember column, Standing standing) {
    double low = standing.low().metres();
    double whole = standing.high().metres() - low;
    if (standing.passed().isEmpty() || !(whole > 0)) {
      return List.of(column);
    }
    List<CoatedMember> pieces = new ArrayList<>();
    Place place = column.place();
    double floor = low;
    for (int i = 0; i <= standing.passed().size(); i++) {
      boolean last = i == standing.passed().size();
      double end = last ? standing.high().metres() : standing.passed().get(i).height().metres();
      double from = i == 0 ? standing.floor().map(f -> f.height().metres()).orElse(low) : floor;
      pieces.add(piece(column, place, (end - floor) / whole, end - from));
      if (!last) {
        floor = end;
        place = place.from(places.storeyOf(standing.passed().get(i)));
      }
    }
    return pieces;
  }

  private static CoatedMember piece(CoatedMember whole, Place place, double share, double top) {
    return whole.piece(place.upTo(Optional.of(Length.ofMetres(Math.max(0, top)))), share);
  }
}
