package org.coatrun.geometry.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.model.ElementId;

/**
 * What one plumb line through bodies meets. Asked for all that stands over each other, it looks
 * into each layer of heights once, when it is first asked about it. Not for several threads.
 */
final class PlumbLine {

  private final Plumb bodies;
  private final double x;
  private final double y;

  /** What it meets in each layer, from the lowest up; null where nobody has asked. */
  private final List<Plumb.Hit>[] known;

  @SuppressWarnings({"unchecked", "rawtypes"})
  PlumbLine(Plumb bodies, double x, double y) {
    this.bodies = bodies;
    this.x = x;
    this.y = y;
    this.known = new List[bodies.layers()];
  }

  /** The highest face of another body that looks up and lies no higher than z. */
  Optional<Plumb.Hit> under(double z, ElementId but) {
    Plumb.Hit found = null;
    for (int i = bodies.layer(z); i >= 0 && i < known.length && found == null; i--) {
      for (Plumb.Hit h : layer(i)) {
        // of those at one height the first
        if (h.up() && h.z() <= z && !h.id().equals(but) && (found == null || h.z() > found.z())) {
          found = h;
        }
      }
    }
    return Optional.ofNullable(found);
  }

  /** The lowest face of another body that looks down and lies no lower than z. */
  Optional<Plumb.Hit> over(double z, ElementId but) {
    for (int i = bodies.layer(z); i < known.length; i++) {
      for (Plumb.Hit h : layer(i)) {
        if (!h.up() && h.z() >= z && !h.id().equals(but)) {
          return Optional.of(h);
        }
      }
    }
    return Optional.empty();
  }

  /** All faces met between two heights, from the lowest up. */
  List<Plumb.Hit> between(double from, double to) {
    List<Plumb.Hit> hits = new ArrayList<>();
    for (int i = bodies.layer(from); i < known.length && i <= bodies.layer(to); i++) {
      for (Plumb.Hit h : layer(i)) {
        if (h.z() >= from && h.z() <= to) {
          hits.add(h);
        }
      }
    }
    return hits;
  }

  private List<Plumb.Hit> layer(int i) {
    if (known[i] == null) {
      known[i] = bodies.hits(i, x, y);
    }
    return known[i];
  }
}
