package org.coatrun.geometry.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.coatrun.shared.model.ElementId;

/** The rooms over each other at one place in plan. */
final class RoomLine {

  /** Floors and ceilings of rooms, from the lowest up. */
  private final List<Plumb.Hit> hits;

  /** The room just above each of them. */
  private final List<Optional<ElementId>> above = new ArrayList<>();

  RoomLine(PlumbLine line) {
    this.hits = line.between(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    Map<ElementId, Integer> entered = new TreeMap<>();
    for (Plumb.Hit hit : hits) {
      entered.merge(hit.id(), hit.up() ? -1 : 1, (a, b) -> a + b == 0 ? null : a + b);
      above.add(first(entered));
    }
  }

  private static Optional<ElementId> first(Map<ElementId, Integer> entered) {
    for (Map.Entry<ElementId, Integer> room : entered.entrySet()) {
      if (room.getValue() > 0) {
        return Optional.of(room.getKey());
      }
    }
    return Optional.empty();
  }

  /**
   * The room around a point; where there is none, the nearest room under it whose floor lies no
   * lower than {@code lowest}: rooms are often drawn up to their ceiling only, and steel is above.
   */
  Optional<ElementId> at(double z, double lowest) {
    int i = hits.size() - 1;
    while (i >= 0 && !(hits.get(i).z() <= z)) {
      i--;
    }
    if (i >= 0 && above.get(i).isPresent()) {
      return above.get(i);
    }
    while (i >= 0 && !hits.get(i).up()) {
      i--;
    }
    return i >= 0 && hits.get(i).z() >= lowest ? Optional.of(hits.get(i).id()) : Optional.empty();
  }
}
