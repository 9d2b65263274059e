package org.coatrun.geometry.floor;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.coatrun.shared.line.Wording;
import org.coatrun.shared.model.Storey;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.surface.Extent;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Floors where the model draws steel and no slab: over the beams of a storey, and the ground at the
 * columns' feet. Assumptions, and marked as such.
 */
final class AssumedFloors {

  private static final double GRAIN = 0.05;
  private static final double SAME_STEEL = 0.6;
  private static final double NEAR_STOREY = 1.0;
  private static final double BELOW = 0.6;
  private static final double ABOVE = 1.0;
  private static final double AROUND_COLUMNS = 3;
  private static final double LEAST_COLUMN = 2;
  private static final double LEAST_BEAM = 1;

  /** Beams that close less than this share of their hull are rails, not a floor. */
  private static final double FILLED = 0.5;

  private final Collection<Extent> steel;
  private final List<Storey> storeys;
  private final FloorOptions options;

  AssumedFloors(Collection<Extent> steel, List<Storey> storeys, FloorOptions options) {
    this.steel = steel;
    this.storeys = storeys;
    this.options = options;
  }

  /** What is missing between the levels that the model draws. */
  List<Level> missing(List<Level> drawn) {
    var found = new ArrayList<Level>();
    overBeams(drawn, found);
    var all = new ArrayList<>(drawn);
    all.addAll(found);
    ground(all).ifPresent(found::add);
    return found;
  }

  private void overBeams(List<Level> drawn, List<Level> found) {
    var left = new ArrayList<Extent>();
    for (Extent e : steel) {
      if (e.lies() && length(e) >= LEAST_BEAM) {
        left.add(e);
      }
    }
    while (!left.isEmpty()) {
      double z = seed(left);
      List<Extent> here =
          left.stream().filter(e -> Math.abs(e.high().z() - z) <= SAME_STEEL).toList();
      left.removeIf(e -> Math.abs(e.high().z() - z) <= SAME_STEEL);
      boolean known = drawn.stream().anyMatch(l -> l.z() > z - BELOW && l.z() < z + ABOVE);
      if (!known && nearStorey(z)) {
        plateOver(here).ifPresent(g -> found.add(level(z, g)));
      }
    }
  }

  private boolean nearStorey(double z) {
    return storeys.isEmpty()
        || storeys.stream().anyMatch(s -> Math.abs(s.elevation().metres() - z) <= NEAR_STOREY);
  }

  private static double seed(List<Extent> beams) {
    var lengths = new TreeMap<Long, Double>();
    for (Extent e : beams) {
      lengths.merge(Math.round(e.high().z() / GRAIN), length(e), Double::sum);
    }
    long best = lengths.firstKey();
    for (long z : lengths.keySet()) {
      best = lengths.get(z) >= lengths.get(best) ? z : best;
    }
    return best * GRAIN;
  }

  private Optional<Geometry> plateOver(List<Extent> beams) {
    var lines = new ArrayList<Geometry>();
    for (Extent e : beams) {
      lines.add(strip(e));
    }
    Geometry closed = Plan.plain(Plan.closed(Plan.union(lines), options.bay()), 0.05);
    var filled = new ArrayList<Geometry>();
    for (Polygon p : Plan.polygons(closed)) {
      boolean floor = p.getArea() >= FILLED * p.convexHull().getArea();
      if (floor && p.getArea() >= 5 * options.leastFloor()) {
        filled.add(Plan.FACTORY.createPolygon(p.getExteriorRing()));
      }
    }
    return filled.isEmpty() ? Optional.empty() : Optional.of(Plan.onGrain(Plan.union(filled)));
  }

  private static Geometry strip(Extent e) {
    Coordinate a = new Coordinate(e.from().x(), e.from().y());
    Coordinate b = new Coordinate(e.to().x(), e.to().y());
    return Plan.grown(Plan.FACTORY.createLineString(new Coordinate[] {a, b}), 0.1);
  }

  /** The ground at the columns' feet, where the lowest level stands well above them. */
  private Optional<Level> ground(List<Level> levels) {
    List<Extent> columns =
        steel.stream().filter(e -> e.upright() && length(e) >= LEAST_COLUMN).toList();
    if (columns.isEmpty()) {
      return Optional.empty();
    }
    double lowest = columns.stream().mapToDouble(e -> e.low().z()).min().orElseThrow();
    List<Extent> feet = columns.stream().filter(e -> e.low().z() <= lowest + 1).toList();
    double z = feet.stream().mapToDouble(e -> e.low().z()).max().orElseThrow();
    boolean known = levels.stream().anyMatch(l -> l.z() < z + options.headroom());
    if (known) {
      return Optional.empty();
    }
    var around = new ArrayList<Geometry>();
    for (Extent e : feet) {
      around.add(
          Plan.grown(
              Plan.FACTORY.toGeometry(
                  new Envelope(e.low().x(), e.high().x(), e.low().y(), e.high().y())),
              AROUND_COLUMNS));
    }
    Geometry plate = Plan.plain(Plan.closed(Plan.union(around), options.bay()), 0.05);
    return Optional.of(level(z, Plan.onGrain(plate)));
  }

  private static Level level(double z, Geometry region) {
    return new Level(z, List.of(new Top(Top.Kind.ASSUMED, z, z, region, Optional.empty())));
  }

  private static double length(Extent e) {
    Vec3 along = e.to().minus(e.from());
    return along.length();
  }

  /** What to say of an assumed floor. */
  static String sentence(String storey, Level level, Wording words) {
    return storey
        + ": no slab is drawn at "
        + words.length(Length.ofMetres(level.z()))
        + "; a floor of "
        + words.area(Area.ofSquareMetres(level.region().getArea()))
        + " was assumed there.";
  }
}
