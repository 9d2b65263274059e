package org.coatrun.shared.bid.inspection;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.units.Area;

/**
 * What is inspected on a floor.
 *
 * @param floorArea for the number of samples on members; without it each kind takes one
 * @param sprayedDeck area of deck to be sprayed
 * @param deckSpots groups of four readings, one for each 1,000 ft2 or part of it
 * @param deckSamples of density, and of bond as many
 * @param kinds of members, by name
 * @param drawn members first, then deck spots
 */
public record FloorInspection(
    String floor,
    Optional<Area> floorArea,
    Area sprayedDeck,
    long deckSpots,
    long deckSamples,
    List<KindCount> kinds,
    List<Drawn> drawn) {

  public FloorInspection {
    kinds = List.copyOf(kinds);
    drawn = List.copyOf(drawn);
  }

  /** Coated members. */
  public long members() {
    return kinds.stream().mapToLong(KindCount::members).sum();
  }

  /** Members drawn for readings. */
  public long drawnMembers() {
    return kinds.stream().mapToLong(KindCount::drawn).sum();
  }

  /** Readings on members and deck. */
  public long readings() {
    return drawn.stream().mapToLong(d -> d.places().readings()).sum();
  }

  /** Density samples, and bond samples as many. */
  public long samples() {
    return deckSamples + kinds.stream().mapToLong(KindCount::samples).sum();
  }
}
