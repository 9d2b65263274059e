package org.coatrun.routing.floor;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The few plane operations that floors need, on JTS geometries. */
final class Planar {

  static final GeometryFactory FACTORY = new GeometryFactory();
  private static final BufferParameters MITRED =
      new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 5);

  private Planar() {}

  /** The union of the regions; rings that cross themselves are mended first. */
  static Geometry union(Collection<Region> regions) {
    var polygons = new ArrayList<Geometry>();
    for (Region r : regions) {
      Geometry g = polygon(r);
      polygons.add(g.isValid() ? g : GeometryFixer.fix(g));
    }
    Geometry all = FACTORY.buildGeometry(polygons);
    return all.isEmpty() ? FACTORY.createPolygon() : OverlayNGRobust.union(all);
  }

  static Geometry minus(Geometry a, Geometry b) {
    return b.isEmpty() ? a : OverlayNGRobust.overlay(a, b, OverlayNG.DIFFERENCE);
  }

  static Geometry common(Geometry a, Geometry b) {
    return OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION);
  }

  /** Grown by {@code by} metres, shrunk where negative; corners stay corners. */
  static Geometry grow(Geometry g, double by) {
    return g.isEmpty() ? g : BufferOp.bufferOp(g, by, MITRED);
  }

  /** The polygons of at least {@code least} m², largest first. */
  static List<Polygon> polygons(Geometry g, double least) {
    var found = new ArrayList<Polygon>();
    for (Object o : PolygonExtracter.getPolygons(g)) {
      if (o instanceof Polygon p && o instanceof Polygonal && p.getArea() >= least) {
        found.add(p);
      }
    }
    found.sort(
        (a, b) ->
            a.getArea() != b.getArea()
                ? Double.compare(b.getArea(), a.getArea())
                : a.getEnvelopeInternal().compareTo(b.getEnvelopeInternal()));
    return found;
  }

  static Region region(Polygon p) {
    var holes = new ArrayList<List<Vec2>>();
    for (int i = 0; i < p.getNumInteriorRing(); i++) {
      holes.add(ring(p.getInteriorRingN(i)));
    }
    return new Region(ring(p.getExteriorRing()), holes);
  }

  static List<Region> regions(Geometry g, double least) {
    return polygons(g, least).stream().map(Planar::region).toList();
  }

  private static Polygon polygon(Region r) {
    LinearRing[] holes = r.holes().stream().map(Planar::linear).toArray(LinearRing[]::new);
    return FACTORY.createPolygon(linear(r.outline()), holes);
  }

  private static LinearRing linear(List<Vec2> ring) {
    var cs = new Coordinate[ring.size() + 1];
    for (int i = 0; i < cs.length; i++) {
      Vec2 p = ring.get(i % ring.size());
      cs[i] = new Coordinate(p.x(), p.y());
    }
    return FACTORY.createLinearRing(cs);
  }

  private static List<Vec2> ring(LinearRing r) {
    var points = new ArrayList<Vec2>();
    for (int i = 0; i + 1 < r.getNumPoints(); i++) {
      Coordinate c = r.getCoordinateN(i);
      points.add(new Vec2(c.x, c.y));
    }
    return points;
  }
}
