package org.coatrun.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;
import org.locationtech.jts.algorithm.RayCrossingCounter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateFilter;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateXY;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/** Rings of plane coordinates, u and v in turn, and the regions they bound. */
final class Rings {

  static final GeometryFactory FACTORY = new GeometryFactory();

  private Rings() {}

  /** Positive where counter-clockwise. */
  static double area(double[] ring) {
    double sum = 0;
    int n = ring.length;
    double ou = ring[0];
    double ov = ring[1];
    for (int i = 2; i + 3 < n; i += 2) {
      sum += (ring[i] - ou) * (ring[i + 3] - ov) - (ring[i + 2] - ou) * (ring[i + 1] - ov);
    }
    return 0.5 * sum;
  }

  /** The middle of a ring's area, which is not nought. */
  static Vec2 middle(double[] ring) {
    double sum = 0;
    double u = 0;
    double v = 0;
    double ou = ring[0];
    double ov = ring[1];
    for (int i = 2; i + 3 < ring.length; i += 2) {
      double au = ring[i] - ou;
      double av = ring[i + 1] - ov;
      double bu = ring[i + 2] - ou;
      double bv = ring[i + 3] - ov;
      double twice = au * bv - bu * av;
      sum += twice;
      u += twice * (au + bu);
      v += twice * (av + bv);
    }
    return new Vec2(ou + u / (3 * sum), ov + v / (3 * sum));
  }

  static double length(double[] ring) {
    double sum = 0;
    int n = ring.length;
    for (int i = 0; i < n; i += 2) {
      int j = i + 2 == n ? 0 : i + 2;
      double du = ring[j] - ring[i];
      double dv = ring[j + 1] - ring[i + 1];
      sum += Math.sqrt(du * du + dv * dv);
    }
    return sum;
  }

  static LinearRing linear(double[] ring) {
    int n = ring.length / 2;
    Coordinate[] c = new Coordinate[n + 1];
    for (int i = 0; i < n; i++) {
      c[i] = new CoordinateXY(ring[2 * i], ring[2 * i + 1]);
    }
    c[n] = c[0].copy();
    return FACTORY.createLinearRing(c);
  }

  /** The corners of a closed ring, the first not repeated. */
  static double[] corners(LinearRing ring) {
    CoordinateSequence c = ring.getCoordinateSequence();
    double[] corners = new double[2 * (c.size() - 1)];
    for (int i = 0; i < corners.length; i += 2) {
      corners[i] = c.getX(i / 2);
      corners[i + 1] = c.getY(i / 2);
    }
    return corners;
  }

  /** The outlines of a region, counter-clockwise, and its holes, clockwise. */
  static List<double[]> of(Geometry region) {
    List<double[]> rings = new ArrayList<>();
    for (int i = 0; i < region.getNumGeometries(); i++) {
      if (region.getGeometryN(i) instanceof Polygon p && !p.isEmpty()) {
        rings.add(turned(p.getExteriorRing(), 1));
        for (int k = 0; k < p.getNumInteriorRing(); k++) {
          rings.add(turned(p.getInteriorRingN(k), -1));
        }
      }
    }
    return rings;
  }

  private static double[] turned(LinearRing ring, int way) {
    double[] corners = corners(ring);
    return way * area(corners) < 0 ? reversed(corners) : corners;
  }

  /** The same corners the other way round. */
  static double[] reversed(double[] ring) {
    int n = ring.length / 2;
    double[] back = new double[ring.length];
    for (int i = 0; i < n; i++) {
      back[2 * i] = ring[2 * (n - 1 - i)];
      back[2 * i + 1] = ring[2 * (n - 1 - i) + 1];
    }
    return back;
  }

  /** A face's polygon in the axes of a plane that it lies in or is projected onto. */
  static Polygon ofFace(Solid solid, Face face, Plane plane) {
    LinearRing shell = linear(onto(solid, face.loops[0], plane));
    LinearRing[] holes = new LinearRing[face.loops.length - 1];
    for (int i = 0; i < holes.length; i++) {
      holes[i] = linear(onto(solid, face.loops[i + 1], plane));
    }
    return FACTORY.createPolygon(shell, holes);
  }

  /** The same as rings, the outer one first. */
  static List<double[]> ringsOfFace(Solid solid, Face face, Plane plane) {
    List<double[]> rings = new ArrayList<>(face.loops.length);
    for (int[] loop : face.loops) {
      rings.add(onto(solid, loop, plane));
    }
    return rings;
  }

  /** A region in a plane's axes, moved with all that stands in space. */
  static Geometry moved(Geometry region, Plane plane, Vec3 by) {
    double u = plane.u(by.x(), by.y(), by.z());
    double v = plane.v(by.x(), by.y(), by.z());
    Geometry copy = region.copy();
    copy.apply(
        (CoordinateFilter)
            c -> {
              c.x += u;
              c.y += v;
            });
    copy.geometryChanged();
    return copy;
  }

  private static double[] onto(Solid solid, int[] loop, Plane plane) {
    double[] ring = new double[2 * loop.length];
    for (int i = 0; i < loop.length; i++) {
      double x = solid.x(loop[i]);
      double y = solid.y(loop[i]);
      double z = solid.z(loop[i]);
      ring[2 * i] = plane.u(x, y, z);
      ring[2 * i + 1] = plane.v(x, y, z);
    }
    return ring;
  }

  /** The region of shells (counter-clockwise) and holes (clockwise). */
  static Geometry region(List<double[]> rings) {
    if (rings.size() == 1) {
      return area(rings.get(0)) > 0
          ? FACTORY.createPolygon(linear(rings.get(0)))
          : FACTORY.createPolygon();
    }
    List<double[]> shells = new ArrayList<>();
    List<double[]> holes = new ArrayList<>();
    for (double[] ring : rings) {
      (area(ring) > 0 ? shells : holes).add(ring);
    }
    return shells.isEmpty() ? FACTORY.createPolygon() : assembled(shells, holes);
  }

  private static Geometry assembled(List<double[]> shells, List<double[]> holes) {
    LinearRing[] outer = new LinearRing[shells.size()];
    List<List<LinearRing>> inner = new ArrayList<>();
    for (int i = 0; i < outer.length; i++) {
      outer[i] = linear(shells.get(i));
      inner.add(new ArrayList<>());
    }
    for (double[] hole : holes) {
      int home = outer.length == 1 ? 0 : smallestAround(shells, outer, hole);
      if (home >= 0) {
        inner.get(home).add(linear(hole));
      }
    }
    Polygon[] parts = new Polygon[outer.length];
    for (int i = 0; i < parts.length; i++) {
      parts[i] = FACTORY.createPolygon(outer[i], inner.get(i).toArray(new LinearRing[0]));
    }
    return parts.length == 1 ? parts[0] : FACTORY.createMultiPolygon(parts);
  }

  private static int smallestAround(List<double[]> shells, LinearRing[] outer, double[] hole) {
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    double own = -area(hole);
    for (int i = 0; i < outer.length; i++) {
      double size = area(shells.get(i));
      if (size < least && size > own && holds(outer[i], hole)) {
        least = size;
        best = i;
      }
    }
    return best;
  }

  private static boolean holds(LinearRing shell, double[] hole) {
    Coordinate[] c = shell.getCoordinates();
    for (int i = 0; i < hole.length; i += 2) {
      int j = i + 2 == hole.length ? 0 : i + 2;
      int where = RayCrossingCounter.locatePointInRing(new CoordinateXY(hole[i], hole[i + 1]), c);
      if (where == Location.BOUNDARY) {
        Coordinate middle =
            new CoordinateXY(0.5 * (hole[i] + hole[j]), 0.5 * (hole[i + 1] + hole[j + 1]));
        where = RayCrossingCounter.locatePointInRing(middle, c);
      }
      if (where != Location.BOUNDARY) {
        return where == Location.INTERIOR;
      }
    }
    return false;
  }
}
