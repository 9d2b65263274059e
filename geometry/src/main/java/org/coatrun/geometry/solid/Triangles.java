package org.coatrun.geometry.solid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Cuts a face into triangles on its own vertices. */
final class Triangles {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Triangles() {}

  /** Vertex numbers of the triangles, each turning the way the face does. */
  static List<int[]> of(double[] xyz, Face face) {
    if (face.loops.length == 1 && face.loops[0].length <= 4) {
      return fan(face.loops[0]);
    }
    Map<Coordinate, Integer> numbers = new HashMap<>();
    LinearRing shell = ring(xyz, face, face.loops[0], numbers);
    LinearRing[] holes = new LinearRing[face.loops.length - 1];
    for (int i = 0; i < holes.length; i++) {
      holes[i] = ring(xyz, face, face.loops[i + 1], numbers);
    }
    Polygon polygon = FACTORY.createPolygon(shell, holes);
    if (!polygon.isValid()) {
      return fans(face);
    }
    Geometry parts = Ears.ofSound(polygon);
    boolean onVertices = Stream.of(parts.getCoordinates()).allMatch(numbers::containsKey);
    return onVertices ? numbered(parts, numbers) : fans(face);
  }

  private static List<int[]> numbered(Geometry parts, Map<Coordinate, Integer> numbers) {
    List<int[]> out = new ArrayList<>();
    for (int i = 0; i < parts.getNumGeometries(); i++) {
      Coordinate[] c = parts.getGeometryN(i).getCoordinates();
      int[] t = {numbers.get(c[0]), numbers.get(c[1]), numbers.get(c[2])};
      double turn = (c[1].x - c[0].x) * (c[2].y - c[0].y) - (c[1].y - c[0].y) * (c[2].x - c[0].x);
      out.add(turn < 0 ? Solids.backwards(t) : t);
    }
    return out;
  }

  private static LinearRing ring(
      double[] xyz, Face face, int[] ring, Map<Coordinate, Integer> numbers) {
    Coordinate[] c = new Coordinate[ring.length + 1];
    for (int i = 0; i <= ring.length; i++) {
      int v = ring[i % ring.length];
      double x = xyz[3 * v];
      double y = xyz[3 * v + 1];
      double z = xyz[3 * v + 2];
      c[i] = new Coordinate(face.plane().u(x, y, z), face.plane().v(x, y, z));
      numbers.putIfAbsent(c[i], v);
    }
    return FACTORY.createLinearRing(c);
  }

  /** Of rings that cross each other or themselves: fans keep the vector area, as volume needs. */
  private static List<int[]> fans(Face face) {
    List<int[]> out = new ArrayList<>();
    for (int[] ring : face.loops) {
      out.addAll(fan(ring));
    }
    return out;
  }

  private static List<int[]> fan(int[] ring) {
    List<int[]> out = new ArrayList<>();
    for (int i = 2; i < ring.length; i++) {
      out.add(new int[] {ring[0], ring[i - 1], ring[i]});
    }
    return out;
  }
}
