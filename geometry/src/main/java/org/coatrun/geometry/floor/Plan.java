package org.coatrun.geometry.floor;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;
import org.locationtech.jts.algorithm.MinimumAreaRectangle;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.precision.GeometryPrecisionReducer;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;

/** Plane operations on plans, in world x and y; results keep to whole tenths of a millimetre. */
final class Plan {

  static final GeometryFactory FACTORY = new GeometryFactory();
  static final Geometry EMPTY = FACTORY.createPolygon();
  private static final PrecisionModel GRAIN = new PrecisionModel(1e4);
  private static final BufferParameters MITRED =
      new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 5);

  private Plan() {}

  /** On the grain; what is thinner than the grain is gone. */
  static Geometry onGrain(Geometry g) {
    return g.isEmpty()
        ? EMPTY
        : areas(GeometryPrecisionReducer.reduce(GeometryFixer.fix(g), GRAIN));
  }

  static Geometry union(Collection<Geometry> parts) {
    var kept = new ArrayList<Geometry>();
    for (Geometry part : parts) {
      if (!part.isEmpty()) {
        kept.add(part);
      }
    }
    return kept.isEmpty() ? EMPTY : areas(OverlayNGRobust.union(FACTORY.buildGeometry(kept)));
  }

  static Geometry less(Geometry a, Geometry b) {
    return a.isEmpty() || b.isEmpty()
        ? a
        : areas(OverlayNGRobust.overlay(a, b, OverlayNG.DIFFERENCE));
  }

  static Geometry common(Geometry a, Geometry b) {
    return a.isEmpty() || b.isEmpty()
        ? EMPTY
        : areas(OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION));
  }

  /** Grown by so much, shrunk where negative; corners stay corners. */
  static Geometry grown(Geometry g, double by) {
    return g.isEmpty() ? EMPTY : areas(BufferOp.bufferOp(g, by, MITRED));
  }

  /** Gaps up to twice the reach closed, the outer edge where it was. */
  static Geometry closed(Geometry g, double reach) {
    return grown(grown(g, reach), -reach);
  }

  /** Corners that hardly stand out of a straight line left out. */
  static Geometry plain(Geometry g, double tolerance) {
    return g.isEmpty() ? EMPTY : areas(TopologyPreservingSimplifier.simplify(g, tolerance));
  }

  /** The smallest rectangle about it, any way round; empty for nothing. */
  static Geometry rectangleAbout(Geometry g) {
    return g.isEmpty() ? EMPTY : areas(MinimumAreaRectangle.getMinimumRectangle(g));
  }

  static Geometry areas(Geometry g) {
    List<Polygon> polygons = polygons(g);
    return polygons.size() == 1
        ? polygons.get(0)
        : FACTORY.createMultiPolygon(polygons.toArray(Polygon[]::new));
  }

  static List<Polygon> polygons(Geometry g) {
    var found = new ArrayList<Polygon>();
    for (Object o : PolygonExtracter.getPolygons(g)) {
      if (o instanceof Polygon p && !p.isEmpty()) {
        found.add(p);
      }
    }
    return found;
  }

  /** A region as a geometry. */
  static Geometry polygon(Region r) {
    LinearRing[] holes = r.holes().stream().map(Plan::linear).toArray(LinearRing[]::new);
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

  /** Polygons of at least so many m² as regions, each written in one way only, in a fixed order. */
  static List<Region> regions(Geometry g, double least) {
    var regions = new ArrayList<Region>();
    for (Polygon p : polygons(onGrain(g))) {
      if (p.getArea() >= least) {
        regions.add(region(p));
      }
    }
    regions.sort(Comparator.comparing(r -> r.outline().get(0), Plan::compare));
    return regions;
  }

  private static Region region(Polygon p) {
    var holes = new ArrayList<List<Vec2>>();
    for (int i = 0; i < p.getNumInteriorRing(); i++) {
      holes.add(ring(p.getInteriorRingN(i), false));
    }
    holes.sort(Comparator.comparing(r -> r.get(0), Plan::compare));
    return new Region(ring(p.getExteriorRing(), true), holes);
  }

  /** Begins at its least point, so that like rings are equal. */
  private static List<Vec2> ring(LinearRing r, boolean anticlockwise) {
    var points = new ArrayList<Vec2>();
    for (int i = 0; i + 1 < r.getNumPoints(); i++) {
      Coordinate c = r.getCoordinateN(i);
      points.add(new Vec2(whole(c.x), whole(c.y)));
    }
    if (Orientation.isCCW(r.getCoordinateSequence()) != anticlockwise) {
      Collections.reverse(points);
    }
    int least = 0;
    for (int i = 1; i < points.size(); i++) {
      least = compare(points.get(i), points.get(least)) < 0 ? i : least;
    }
    Collections.rotate(points, -least);
    return points;
  }

  /** On the grain, and never minus zero. */
  private static double whole(double v) {
    return Math.rint(v * 1e4) / 1e4 + 0.0;
  }

  static int compare(Vec2 a, Vec2 b) {
    return a.x() != b.x() ? Double.compare(a.x(), b.x()) : Double.compare(a.y(), b.y());
  }
}
