package org.coatrun.geometry.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.geometry.solid.Box;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Finds what stands near a body, by boxes. May be asked by several threads. */
final class Neighbours {

  private final STRtree tree = new STRtree();
  private final double gap;
  private final boolean empty;

  Neighbours(List<Thing> things, double gap) {
    this.gap = gap;
    for (Thing t : things) {
      tree.insert(envelope(t.bounds(), 0), t);
    }
    tree.build();
    empty = things.isEmpty();
  }

  /** What is within the gap of a body, itself apart, sorted by number. */
  List<Thing> of(Thing thing) {
    List<Thing> out = new ArrayList<>();
    if (!empty) {
      for (Object o : tree.query(envelope(thing.bounds(), gap))) {
        Thing t = (Thing) o;
        if (!t.id().equals(thing.id()) && t.bounds().overlaps(thing.bounds(), gap)) {
          out.add(t);
        }
      }
      out.sort(Comparator.comparing(Thing::id));
    }
    return out;
  }

  private static Envelope envelope(Box b, double gap) {
    return new Envelope(b.minX() - gap, b.maxX() + gap, b.minY() - gap, b.maxY() + gap);
  }
}
