package org.coatrun.routing.floor;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.SlabOpening;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.precision.GeometryPrecisionReducer;

/**
 * The part of a floor where a person and a hose can go: slab and assumed ground less openings,
 * walls, columns and keep-outs, all kept clear of by a margin.
 *
 * <p>Every corner lies on whole tenths of a millimetre. A gap not wider than twice the margin plus
 * 2 mm is closed. Pieces under half a square metre are left out. The area may be empty.
 */
public final class FreeArea {

  /** Coordinates are whole multiples of this, in metres. */
  public static final double GRAIN = 1e-4;

  /** Taken off last, so that two obstacles never meet in a single point with free floor around. */
  private static final double PINCH = 1e-3;

  private static final double LEAST_PIECE = 0.5;

  private final Geometry area;
  private final PreparedGeometry prepared;
  private final List<Region> regions;
  private final IndexedPointInAreaLocator locator;
  private final IndexedFacetDistance edges;

  private FreeArea(Geometry cut) {
    Geometry onGrain =
        GeometryPrecisionReducer.reduce(
            Planar.grow(cut, -PINCH), new PrecisionModel(Math.rint(1 / GRAIN)));
    List<Polygon> pieces = Planar.polygons(onGrain, LEAST_PIECE);
    area = Planar.FACTORY.createMultiPolygon(pieces.toArray(Polygon[]::new));
    prepared = PreparedGeometryFactory.prepare(area);
    regions = pieces.stream().map(Planar::region).toList();
    locator = new IndexedPointInAreaLocator(area);
    edges = new IndexedFacetDistance(area);
  }

  /** Cuts the free area out of a floor, with {@code margin} kept to all that is not free. */
  public static FreeArea of(FloorOutline floor, Collection<Region> keepOuts, Length margin) {
    var all = new ArrayList<>(floor.plate());
    all.addAll(floor.ground());
    return of(all, blocked(floor, keepOuts), margin);
  }

  /** The same of the assumed ground beside the floor alone. */
  public static FreeArea ofGround(FloorOutline floor, Collection<Region> keepOuts, Length margin) {
    return of(floor.ground(), blocked(floor, keepOuts), margin);
  }

  private static Collection<Region> blocked(FloorOutline floor, Collection<Region> keepOuts) {
    var blocked = new ArrayList<>(floor.walls());
    blocked.addAll(floor.columns());
    floor.openings().stream().map(SlabOpening::region).forEach(blocked::add);
    blocked.addAll(keepOuts);
    return blocked;
  }

  /** The plate less all that is blocked, with {@code margin} kept to both. */
  public static FreeArea of(Collection<Region> plate, Collection<Region> blocked, Length margin) {
    Geometry kept = Planar.grow(Planar.union(plate), -margin.metres());
    Geometry taken = Planar.grow(Planar.union(blocked), margin.metres());
    return new FreeArea(Planar.minus(kept, taken));
  }

  /** The free area, largest piece first; corners on the grain. */
  public List<Region> regions() {
    return regions;
  }

  /** Its size in m². */
  public double squareMetres() {
    return area.getArea();
  }

  /** Whether the point is free or on the edge of the free area. */
  public boolean contains(Vec2 p) {
    return locator.locate(new Coordinate(p.x(), p.y())) != Location.EXTERIOR;
  }

  /** Whether all of a rectangle along the axes is free. */
  public boolean holds(double x0, double y0, double x1, double y1) {
    return prepared.covers(Planar.FACTORY.toGeometry(new Envelope(x0, x1, y0, y1)));
  }

  /**
   * The free point on the grain nearest to {@code p} (within a few tenths of a millimetre), or
   * empty where there is none within {@code reach}.
   */
  public Optional<Vec2> nearest(Vec2 p, Length reach) {
    Vec2 own = onGrain(p);
    if (contains(own)) {
      return Optional.of(own);
    }
    if (area.isEmpty()) {
      return Optional.empty();
    }
    Coordinate at = new Coordinate(p.x(), p.y());
    Coordinate c = edges.nearestPoints(Planar.FACTORY.createPoint(at))[0];
    if (c.distance(at) > reach.metres()) {
      return Optional.empty();
    }
    return Optional.of(inside(new Vec2(c.x, c.y)));
  }

  /** A point that lies on a slanting edge is no grain point; the nearest free one is. */
  private Vec2 inside(Vec2 edge) {
    Vec2 best = null;
    for (int ring = 0; best == null && ring < 8; ring++) {
      best = nearestFreeGrain(edge, ring);
    }
    return best == null ? nearestCorner(edge) : best;
  }

  private Vec2 nearestFreeGrain(Vec2 edge, int ring) {
    Vec2 best = null;
    for (int i = -ring; i <= ring; i++) {
      for (int j = -ring; j <= ring; j++) {
        Vec2 q = onGrain(new Vec2(edge.x() + i * GRAIN, edge.y() + j * GRAIN));
        if (contains(q) && (best == null || q.distance(edge) < best.distance(edge))) {
          best = q;
        }
      }
    }
    return best;
  }

  private Vec2 nearestCorner(Vec2 edge) {
    Vec2 best = regions.get(0).outline().get(0);
    for (Coordinate c : area.getCoordinates()) {
      Vec2 q = new Vec2(c.x, c.y);
      if (q.distance(edge) < best.distance(edge)) {
        best = q;
      }
    }
    return best;
  }

  private static Vec2 onGrain(Vec2 p) {
    double scale = Math.rint(1 / GRAIN);
    return new Vec2(Math.rint(p.x() * scale) / scale, Math.rint(p.y() * scale) / scale);
  }
}
