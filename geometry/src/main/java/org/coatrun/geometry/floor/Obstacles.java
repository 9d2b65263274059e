package org.coatrun.geometry.floor;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.geometry.solid.Box;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.LineFinding;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Bulk;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.model.Wall;
import org.coatrun.shared.surface.Extent;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** What stands on floors before the spraying: concrete and masonry walls, columns, braces. */
final class Obstacles {

  /** A rectangle about a cut that is larger than this is no column's. */
  private static final double LARGEST_COLUMN = 2.5;

  private final FloorOptions options;
  private final Cuts cuts;
  private final SteelIndex steel;
  private final List<Cut> walls = new ArrayList<>();
  private final List<Cut> posts = new ArrayList<>();
  private final Map<ElementId, Member> members = new HashMap<>();
  private final Map<ElementId, Optional<Cut>> steelCuts = new HashMap<>();

  Obstacles(Building building, SteelIndex steel, Cuts cuts, FloorOptions options) {
    this.options = options;
    this.cuts = cuts;
    this.steel = steel;
    for (Member m : building.members()) {
      if (m.classification().isSteel()) {
        members.put(m.id(), m);
      } else if (stands(m.classification().substance())) {
        cuts.of(m).ifPresent(posts::add);
      }
    }
    for (Bulk b : building.bulks()) {
      if (stands(b.classification().substance())) {
        cuts.of(b).ifPresent(walls::add);
      }
    }
  }

  private static boolean stands(Substance s) {
    return s == Substance.CONCRETE || s == Substance.MASONRY;
  }

  /** Takes the walls, those of unknown material by their thickness, and says so. */
  void addWalls(Building building, List<Finding> findings) {
    int thick = 0;
    int thin = 0;
    for (Wall w : building.walls()) {
      Substance s = w.classification().substance();
      if (!stands(s) && s != Substance.UNKNOWN) {
        continue;
      }
      Optional<Cut> cut = cuts.of(w);
      if (cut.isEmpty()) {
        continue;
      }
      boolean unknown = s == Substance.UNKNOWN;
      boolean standing = !unknown || thickness(cut.get()) >= options.standingWall();
      thick += unknown && standing ? 1 : 0;
      thin += unknown && !standing ? 1 : 0;
      if (standing) {
        walls.add(cut.get());
      }
    }
    if (thick + thin > 0) {
      findings.add(
          Finding.of(
              LineFinding.WALLS_BY_THICKNESS,
              thick
                  + " walls of unknown material are taken to stand, "
                  + thin
                  + " thinner ones to come after the spraying."));
    }
  }

  /** Of a long wall: area over half the way round, cut at half its height. */
  private static double thickness(Cut wall) {
    Box b = wall.box();
    Geometry cut = wall.at(0.5 * (b.minZ() + b.maxZ()));
    return cut.isEmpty() ? 0 : 2 * cut.getArea() / cut.getLength();
  }

  /** What walls, concrete members and the like fill just under the top of a slab. */
  Geometry fillUnder(double z) {
    double at = z - 0.03;
    var parts = new ArrayList<Geometry>();
    walls.forEach(w -> parts.add(w.at(at)));
    posts.forEach(p -> parts.add(p.at(at)));
    return Plan.union(parts);
  }

  /** Walls at ankle height, and whatever else stands there and is no column. */
  Geometry walls(double z, Geometry plate) {
    var parts = new ArrayList<Geometry>();
    for (Cut w : walls) {
      if (blocks(w.box().minZ(), w.box().maxZ(), z)) {
        parts.add(w.at(z + options.ankle()));
      }
    }
    for (Extent e : steel.near(plate)) {
      if (blocks(e.low().z(), e.high().z(), z) && !e.upright()) {
        parts.add(Plan.rectangleAbout(atAnkle(e, z)));
      }
    }
    return Plan.common(Plan.union(parts), Plan.grown(plate, 0.5));
  }

  /** Rectangles about the columns at ankle height. */
  Geometry columns(double z, Geometry plate) {
    var parts = new ArrayList<Geometry>();
    for (Cut p : posts) {
      if (blocks(p.box().minZ(), p.box().maxZ(), z)) {
        parts.add(p.at(z + options.ankle()));
      }
    }
    for (Extent e : steel.near(plate)) {
      if (blocks(e.low().z(), e.high().z(), z) && e.upright()) {
        parts.add(atAnkle(e, z));
      }
    }
    var columns = new ArrayList<Geometry>();
    Geometry near = Plan.grown(plate, 0.3);
    for (Polygon p : Plan.polygons(Plan.union(parts))) {
      Geometry about = Plan.rectangleAbout(p);
      Geometry taken = about.getArea() <= LARGEST_COLUMN ? about : p;
      if (near.intersects(taken)) {
        columns.add(taken);
      }
    }
    return columns.isEmpty()
        ? Plan.EMPTY
        : Plan.FACTORY.createMultiPolygon(
            columns.stream().flatMap(c -> Plan.polygons(c).stream()).toArray(Polygon[]::new));
  }

  private boolean blocks(double low, double high, double z) {
    return low <= z + options.ankle() && high >= z + options.stepHeight();
  }

  private Geometry atAnkle(Extent e, double z) {
    Member m = members.get(e.id());
    if (m == null || m.role() == Role.PLATE || m.role() == Role.FASTENER) {
      return Plan.EMPTY;
    }
    return steelCuts
        .computeIfAbsent(e.id(), k -> cuts.of((Element) m))
        .map(c -> c.at(z + options.ankle()))
        .orElse(Plan.EMPTY);
  }
}
