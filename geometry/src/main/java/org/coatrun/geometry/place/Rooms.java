package org.coatrun.geometry.place;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.shared.model.ElementId;

/** Finds the room that a point lies in. */
final class Rooms {

  private final Plumb plumb;

  Rooms(List<Thing> rooms) {
    this.plumb = new Plumb(rooms);
  }

  /**
   * The room around a point; where there is none, the nearest room under it whose floor lies no
   * lower than {@code lowest}: rooms are often drawn up to their ceiling only, and steel is above.
   */
  Optional<ElementId> at(double x, double y, double z, double lowest) {
    TreeMap<ElementId, Integer> inside = new TreeMap<>();
    ElementId below = null;
    for (Plumb.Hit hit : plumb.all(x, y, Double.NEGATIVE_INFINITY, z)) {
      inside.merge(hit.id(), hit.up() ? -1 : 1, Integer::sum);
      if (hit.up() && hit.z() >= lowest) {
        below = hit.id();
      }
    }
    for (Map.Entry<ElementId, Integer> room : inside.entrySet()) {
      if (room.getValue() > 0) {
        return Optional.of(room.getKey());
      }
    }
    return Optional.ofNullable(below);
  }
}
