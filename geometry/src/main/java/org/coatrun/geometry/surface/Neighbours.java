package org.coatrun.geometry.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.geometry.solid.Box;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

/**
 * Finds what stands near a body, by boxes. May be asked by several threads.
 *
 * <p>One tree in plan for each layer of heights: what stands on the storeys of a tower shares its
 * place in plan with much that is nowhere near.
 */
final class Neighbours {

  private static final int MOST_LAYERS = 256;

  /** Bodies in a layer, so that neither trees nor layers are many. */
  private static final int IN_LAYER = 64;

  private final HPRtree[] layers;
  private final double bottom;
  private final double thickness;
  private final double gap;

  Neighbours(List<Thing> things, double gap) {
    this.gap = gap;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Thing t : things) {
      low = Math.min(low, t.bounds().minZ());
      high = Math.max(high, t.bounds().maxZ());
    }
    int count = Math.max(1, Math.min(MOST_LAYERS, things.size() / IN_LAYER));
    bottom = low;
    thickness = high > low ? (high - low) / count : 1;
    layers = new HPRtree[count];
    for (int i = 0; i < count; i++) {
      layers[i] = new HPRtree();
    }
    for (Thing t : things) {
      for (int i = layer(t.bounds().minZ()); i <= layer(t.bounds().maxZ()); i++) {
        layers[i].insert(envelope(t.bounds(), 0), t);
      }
    }
    for (HPRtree tree : layers) {
      tree.build();
    }
  }

  /** What is within the gap of a body, itself apart, sorted by number. */
  List<Thing> of(Thing thing) {
    List<Thing> out = new ArrayList<>();
    Envelope plan = envelope(thing.bounds(), gap);
    int lowest = layer(thing.bounds().minZ() - gap);
    int highest = layer(thing.bounds().maxZ() + gap);
    for (int i = lowest; i <= highest; i++) {
      if (layers[i].size() > 0) {
        for (Object o : layers[i].query(plan)) {
          Thing t = (Thing) o;
          // what reaches through several layers is found in the first of them only
          if (i == Math.max(lowest, layer(t.bounds().minZ())) && isNear(t, thing)) {
            out.add(t);
          }
        }
      }
    }
    out.sort(Comparator.comparing(Thing::id));
    return out;
  }

  private boolean isNear(Thing other, Thing thing) {
    return !other.id().equals(thing.id()) && other.bounds().overlaps(thing.bounds(), gap);
  }

  private int layer(double height) {
    double at = Math.floor((height - bottom) / thickness);
    return (int) Math.max(0, Math.min(layers.length - 1, at));
  }

  private static Envelope envelope(Box b, double gap) {
    return new Envelope(b.minX() - gap, b.maxX() + gap, b.minY() - gap, b.maxY() + gap);
  }
}
