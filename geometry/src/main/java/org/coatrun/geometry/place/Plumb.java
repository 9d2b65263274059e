package org.coatrun.geometry.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.shape.Vec3;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.index.strtree.STRtree;

/** What a plumb line through bodies meets: the faces that look up and those that look down. */
final class Plumb {

  /** Faces steeper than this share of level are no floor and no ceiling. */
  private static final double LEVEL = 0.5;

  /** A face that a plumb line meets. */
  record Hit(ElementId id, boolean up, double z) {}

  private record Sheet(Thing of, Patch patch) {}

  private final STRtree tree = new STRtree();
  private boolean empty = true;

  /** A line through the faces of these bodies. */
  Plumb(List<Thing> bodies) {
    for (Thing body : bodies) {
      for (Patch p : body.form().boundary().patches()) {
        if (Math.abs(p.plane().nz()) > LEVEL) {
          var b = p.bounds().moved(body.at());
          tree.insert(new Envelope(b.minX(), b.maxX(), b.minY(), b.maxY()), new Sheet(body, p));
          empty = false;
        }
      }
    }
    tree.build();
  }

  /** The highest face of another body that looks up and lies no higher than z. */
  Optional<Hit> under(double x, double y, double z, ElementId but) {
    return first(
        x,
        y,
        h -> h.up() && h.z() <= z && !h.id().equals(but),
        Comparator.comparingDouble(Hit::z).reversed());
  }

  /** The lowest face of another body that looks down and lies no lower than z. */
  Optional<Hit> over(double x, double y, double z, ElementId but) {
    return first(
        x,
        y,
        h -> !h.up() && h.z() >= z && !h.id().equals(but),
        Comparator.comparingDouble(Hit::z));
  }

  /** All faces met, from the lowest up. */
  List<Hit> all(double x, double y) {
    List<Hit> hits = new ArrayList<>();
    for (Sheet s : at(x, y)) {
      Hit hit = hit(s, x, y);
      if (meets(s, hit, x, y)) {
        hits.add(hit);
      }
    }
    hits.sort(order(Comparator.comparingDouble(Hit::z)));
    return hits;
  }

  // Whether a face is met is asked last: it costs most.
  private Optional<Hit> first(double x, double y, Predicate<Hit> wanted, Comparator<Hit> nearest) {
    record Candidate(Sheet sheet, Hit hit) {}
    Comparator<Candidate> order = Comparator.comparing(Candidate::hit, order(nearest));
    return at(x, y).stream()
        .map(s -> new Candidate(s, hit(s, x, y)))
        .filter(c -> wanted.test(c.hit()))
        .sorted(order)
        .filter(c -> meets(c.sheet(), c.hit(), x, y))
        .map(Candidate::hit)
        .findFirst();
  }

  private static Comparator<Hit> order(Comparator<Hit> nearest) {
    return nearest.thenComparing(Hit::id);
  }

  private List<Sheet> at(double x, double y) {
    List<Sheet> sheets = new ArrayList<>();
    if (!empty) {
      for (Object o : tree.query(new Envelope(x, x, y, y))) {
        sheets.add((Sheet) o);
      }
    }
    return sheets;
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
