package org.coatrun.geometry.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.geometry.solid.Box;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.shape.Vec3;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * What a plumb line through bodies meets: the faces that look up and those that look down. May be
 * asked by several threads.
 *
 * <p>One tree in plan for each layer of heights, so that what is asked of one storey of a tower
 * does not go through all of them.
 */
final class Plumb {

  /** Faces steeper than this share of level are no floor and no ceiling. */
  private static final double LEVEL = 0.5;

  private static final int MOST_LAYERS = 256;

  /** Faces in a layer, so that neither trees nor layers are many. */
  private static final int IN_LAYER = 64;

  /** Where a line meets a face may lie this much outside the face's box. */
  private static final double NOISE = 1e-6;

  /** A face that a plumb line meets. */
  record Hit(ElementId id, boolean up, double z) {}

  private record Sheet(Thing of, Patch patch, Box box) {}

  private final STRtree[] layers;
  private final double bottom;
  private final double thickness;

  /** A line through the faces of these bodies. */
  Plumb(List<Thing> bodies) {
    List<Sheet> sheets = new ArrayList<>();
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Thing body : bodies) {
      for (Patch p : body.form().boundary().patches()) {
        if (Math.abs(p.plane().nz()) > LEVEL) {
          Box box = p.bounds().moved(body.at());
          sheets.add(new Sheet(body, p, box));
          low = Math.min(low, box.minZ());
          high = Math.max(high, box.maxZ());
        }
      }
    }
    int count = Math.min(MOST_LAYERS, (sheets.size() + IN_LAYER - 1) / IN_LAYER);
    bottom = low;
    thickness = high > low ? (high - low) / count : 1;
    layers = new STRtree[count];
    for (int i = 0; i < count; i++) {
      layers[i] = new STRtree();
    }
    sheets.forEach(this::insert);
    for (STRtree layer : layers) {
      layer.build();
    }
  }

  private void insert(Sheet sheet) {
    Box b = sheet.box();
    Envelope plan = new Envelope(b.minX(), b.maxX(), b.minY(), b.maxY());
    for (int i = layer(b.minZ() - NOISE); i <= layer(b.maxZ() + NOISE); i++) {
      layers[i].insert(plan, sheet);
    }
  }

  private int layer(double height) {
    double at = Math.floor((height - bottom) / thickness);
    return (int) Math.max(0, Math.min(layers.length - 1, at));
  }

  /** The highest face of another body that looks up and lies no higher than z. */
  Optional<Hit> under(double x, double y, double z, ElementId but) {
    Comparator<Hit> nearest = order(Comparator.comparingDouble(Hit::z).reversed());
    Predicate<Hit> wanted = h -> h.up() && h.z() <= z && !h.id().equals(but);
    Optional<Hit> found = Optional.empty();
    for (int i = layer(z); i >= 0 && i < layers.length && found.isEmpty(); i--) {
      found = first(i, x, y, wanted, nearest);
    }
    return found;
  }

  /** The lowest face of another body that looks down and lies no lower than z. */
  Optional<Hit> over(double x, double y, double z, ElementId but) {
    Comparator<Hit> nearest = order(Comparator.comparingDouble(Hit::z));
    Predicate<Hit> wanted = h -> !h.up() && h.z() >= z && !h.id().equals(but);
    Optional<Hit> found = Optional.empty();
    for (int i = layer(z); i < layers.length && found.isEmpty(); i++) {
      found = first(i, x, y, wanted, nearest);
    }
    return found;
  }

  /** All faces met between two heights, from the lowest up. */
  List<Hit> all(double x, double y, double from, double to) {
    List<Hit> hits = new ArrayList<>();
    for (int i = layer(from); i < layers.length && i <= layer(to); i++) {
      meeting(
          i,
          x,
          y,
          h -> h.z() >= from && h.z() <= to,
          c -> {
            if (meets(c.sheet(), c.hit(), x, y)) {
              hits.add(c.hit());
            }
          });
    }
    hits.sort(order(Comparator.comparingDouble(Hit::z)));
    return hits;
  }

  private record Candidate(Sheet sheet, Hit hit) {}

  // Whether a face is met is asked last: it costs most.
  private Optional<Hit> first(
      int layer, double x, double y, Predicate<Hit> wanted, Comparator<Hit> nearest) {
    List<Candidate> candidates = new ArrayList<>();
    meeting(layer, x, y, wanted, candidates::add);
    candidates.sort(Comparator.comparing(Candidate::hit, nearest));
    for (Candidate c : candidates) {
      if (meets(c.sheet(), c.hit(), x, y)) {
        return Optional.of(c.hit());
      }
    }
    return Optional.empty();
  }

  /** The faces over or under a point that a line through it meets in a layer, if in their rings. */
  private void meeting(
      int layer, double x, double y, Predicate<Hit> wanted, Consumer<Candidate> action) {
    if (layers[layer].isEmpty()) {
      return;
    }
    for (Object o : layers[layer].query(new Envelope(x, x, y, y))) {
      Sheet sheet = (Sheet) o;
      Hit hit = hit(sheet, x, y);
      // what reaches through several layers is met in one of them
      if (layer(hit.z()) == layer && wanted.test(hit)) {
        action.accept(new Candidate(sheet, hit));
      }
    }
  }

  private static Comparator<Hit> order(Comparator<Hit> nearest) {
    return nearest.thenComparing(Hit::id);
  }

  private static Hit hit(Sheet s, double x, double y) {
    Plane p = s.patch().plane();
    Vec3 at = s.of().at();
    double z = at.z() - p.height(x - at.x(), y - at.y(), 0) / p.nz();
    return new Hit(s.of().id(), p.nz() > 0, z);
  }

  private static boolean meets(Sheet s, Hit hit, double x, double y) {
    Plane p = s.patch().plane();
    Vec3 at = s.of().at();
    double dx = x - at.x();
    double dy = y - at.y();
    double dz = hit.z() - at.z();
    Coordinate foot = new Coordinate(p.u(dx, dy, dz), p.v(dx, dy, dz));
    return SimplePointInAreaLocator.locate(foot, s.patch().region()) != Location.EXTERIOR;
  }
}
