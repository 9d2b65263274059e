package org.coatrun.geometry.floor;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Chooses, of all levels, the floors that steel is sprayed from. */
final class WorkingLevels {

  /** Less clear height than this over a slab leaves no room to work. */
  private static final double CRAWL = 1.5;

  private final SteelIndex steel;
  private final FloorOptions options;

  WorkingLevels(SteelIndex steel, FloorOptions options) {
    this.steel = steel;
    this.options = options;
  }

  /**
   * The levels that steel stands over, and the lowest one in any case; bare deck only where steel
   * stands over it, small pieces and crawl spaces left out.
   */
  List<Level> of(List<Level> all) {
    var working = new ArrayList<Level>();
    for (Level level : all) {
      List<Top> kept = new ArrayList<>();
      for (Top t : level.tops()) {
        if (t.kind() != Top.Kind.BARE_DECK
            || (!isUnderConcrete(t, level) && steelOver(t.z(), t.region()))) {
          kept.add(t);
        }
      }
      if (kept.isEmpty()) {
        continue;
      }
      Level walkable = large(Level.of(kept), all);
      boolean lowest = working.isEmpty();
      if (!walkable.tops().isEmpty() && (lowest || steelOver(level.z(), walkable.region()))) {
        working.add(walkable);
      }
    }
    return working;
  }

  /** Whether concrete that is drawn by itself lies on most of the deck. */
  private static boolean isUnderConcrete(Top deck, Level level) {
    double covered = 0;
    for (Top t : level.tops()) {
      boolean over = t.z() > deck.z() - 0.05 && t.z() < deck.z() + 0.3;
      if (t.kind() != Top.Kind.BARE_DECK && over) {
        covered += Plan.common(t.region(), deck.region()).getArea();
      }
    }
    return covered > 0.5 * deck.area();
  }

  private boolean steelOver(double z, Geometry region) {
    return steel.highestOver(region) >= z + options.headroom();
  }

  private Level large(Level level, List<Level> all) {
    Geometry region = level.region();
    for (Level above : all) {
      if (above.z() > level.z() && above.z() < level.z() + CRAWL) {
        region = Plan.less(region, above.region());
      }
    }
    var pieces = new ArrayList<Geometry>();
    for (Polygon p : Plan.polygons(Plan.closed(region, options.joint()))) {
      if (p.getArea() >= options.leastFloor()) {
        pieces.add(p);
      }
    }
    if (pieces.isEmpty()) {
      return new Level(level.z(), List.of());
    }
    Geometry kept = Plan.union(pieces);
    var tops = new ArrayList<Top>();
    for (Top t : level.tops()) {
      Geometry part = Plan.common(t.region(), kept);
      if (!part.isEmpty()) {
        tops.add(new Top(t.kind(), t.z(), t.under(), part, t.from()));
      }
    }
    return new Level(level.z(), tops);
  }
}
