package org.coatrun.geometry.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.coatrun.geometry.solid.Box;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.SlabOpening;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Opening;
import org.coatrun.shared.model.Stair;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Where a floor is open to the storey below. */
final class Voids {

  /** Words for stairs and ramps that models use in names; hints only, bodies come first. */
  private static final Pattern STAIR =
      Pattern.compile("stair|treppe|escalier|escalera|scala|trappe|ramp", Pattern.CASE_INSENSITIVE);

  /** A stair's box that covers this share of an opening makes it a stairwell. */
  private static final double SHARE = 0.3;

  /** Flights that end this far under a floor still belong to the stair that leads up to it. */
  private static final double BELOW = 3;

  /** A hole in a slab as the model draws it. */
  private record Drawn(String name, Geometry region) {}

  private final Cuts cuts;
  private final FloorOptions options;
  private final List<Box> stairs = new ArrayList<>();

  Voids(Building building, Cuts cuts, FloorOptions options) {
    this.cuts = cuts;
    this.options = options;
    for (Stair stair : building.stairs()) {
      cuts.uncut(stair).ifPresent(c -> stairs.add(c.box()));
    }
  }

  /** Sleeves filled: openings too small to matter. */
  Geometry withoutSleeves(Geometry plate) {
    var parts = new ArrayList<Geometry>(Plan.polygons(plate));
    for (Polygon p : Plan.polygons(plate)) {
      for (Polygon hole : holes(p)) {
        if (hole.getArea() < options.leastOpening()) {
          parts.add(hole);
        }
      }
    }
    return Plan.union(parts);
  }

  /**
   * Real voids only: what no slab or wall fills. Named after the drawn opening that fits best; in a
   * fixed order.
   *
   * @param filled plate and walls together
   */
  List<SlabOpening> of(Level level, Geometry plate, Geometry filled) {
    List<Drawn> drawn = drawn(level);
    var parts = new ArrayList<Geometry>();
    drawn.forEach(d -> parts.add(d.region()));
    for (Polygon p : Plan.polygons(plate)) {
      parts.addAll(holes(p));
    }
    Geometry open = Plan.less(Plan.union(parts), filled);
    var openings = new ArrayList<SlabOpening>();
    for (Region r : Plan.regions(openedUp(open), options.leastOpening())) {
      openings.add(opening(r, level, drawn));
    }
    return openings;
  }

  /** Slits narrower than a hand are no openings. */
  private Geometry openedUp(Geometry open) {
    return Plan.common(
        Plan.grown(Plan.grown(open, -options.joint()), 1.01 * options.joint()), open);
  }

  private List<Drawn> drawn(Level level) {
    var drawn = new ArrayList<Drawn>();
    for (Top top : level.tops()) {
      top.from()
          .ifPresent(
              host -> {
                for (Opening o : cuts.openingsOf(host)) {
                  cuts.uncut(o).ifPresent(c -> drawn.add(drawn(o, c, top)));
                }
              });
    }
    return drawn;
  }

  private static Drawn drawn(Opening o, Cut c, Top top) {
    double low = Math.max(top.under(), c.box().minZ());
    double high = Math.min(top.z(), c.box().maxZ());
    Geometry region = high > low ? c.at(0.5 * (low + high)) : Plan.EMPTY;
    return new Drawn(o.identity().name(), region);
  }

  private SlabOpening opening(Region r, Level level, List<Drawn> drawn) {
    Geometry region = Plan.polygon(r);
    Drawn best = null;
    double most = 0;
    for (Drawn d : drawn) {
      double shared = Plan.common(d.region(), region).getArea();
      double fit = shared / (d.region().getArea() + region.getArea() - shared);
      if (fit > most) {
        most = fit;
        best = d;
      }
    }
    String name = best == null ? "" : best.name();
    boolean stair = holdsStair(region, level.z()) || STAIR.matcher(plain(name)).find();
    return new SlabOpening(name, stair ? SlabOpening.Kind.STAIR : SlabOpening.Kind.SHAFT, r);
  }

  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  private boolean holdsStair(Geometry region, double z) {
    var covers = new ArrayList<Geometry>();
    for (Box b : stairs) {
      if (b.minZ() < z - 0.5 && b.maxZ() > z - BELOW) {
        covers.add(Plan.FACTORY.toGeometry(new Envelope(b.minX(), b.maxX(), b.minY(), b.maxY())));
      }
    }
    return Plan.common(Plan.union(covers), region).getArea() >= SHARE * region.getArea();
  }

  private static List<Polygon> holes(Polygon p) {
    var holes = new ArrayList<Polygon>();
    for (int i = 0; i < p.getNumInteriorRing(); i++) {
      LinearRing ring = p.getInteriorRingN(i);
      holes.add(Plan.FACTORY.createPolygon(ring));
    }
    return holes;
  }
}
