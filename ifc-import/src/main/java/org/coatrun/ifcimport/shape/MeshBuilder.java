package org.coatrun.ifcimport.shape;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Vec3;

/** Gathers plane faces on shared points. */
final class MeshBuilder {

  private final Axes axes;
  private final Map<Long, Integer> numbers = new HashMap<>();
  private final List<Vec3> points = new ArrayList<>();
  private final List<Shape.MeshFace> faces = new ArrayList<>();

  MeshBuilder(Axes axes) {
    this.axes = axes;
  }

  /** The shell's faces, with points that are one record made one. */
  void addShell(Entity shell) {
    for (Entity face : shell.needRefs("CfsFaces")) {
      addFace(face);
    }
  }

  private void addFace(Entity face) {
    int[] outer = null;
    var holes = new ArrayList<int[]>();
    for (Entity bound : face.needRefs("Bounds")) {
      int[] ring = ring(bound);
      if (ring.length < 3) {
        continue;
      }
      boolean isOuter = bound.isA("IfcFaceOuterBound");
      if (outer == null) {
        outer = ring;
      } else if (isOuter) {
        holes.add(outer);
        outer = ring;
      } else {
        holes.add(ring);
      }
    }
    if (outer != null) {
      faces.add(new Shape.MeshFace(outer, holes));
    }
  }

  private int[] ring(Entity bound) {
    Entity loop = bound.need("Bound");
    List<Integer> ring = new ArrayList<>();
    if (loop.isA("IfcPolyLoop")) {
      for (long point : loop.refIds("Polygon")) {
        append(ring, number(point, loop));
      }
    } else if (loop.isA("IfcEdgeLoop")) {
      for (Entity edge : loop.needRefs("EdgeList")) {
        append(ring, number(Edges.startVertex(edge).id(), loop));
      }
    } else if (!loop.isA("IfcVertexLoop")) {
      throw loop.broken("this kind of loop is not handled");
    }
    if (ring.size() > 1 && ring.get(0).equals(ring.get(ring.size() - 1))) {
      ring.remove(ring.size() - 1);
    }
    int[] numbersOf = ring.stream().mapToInt(Integer::intValue).toArray();
    return bound.flag("Orientation").orElse(true) ? numbersOf : turned(numbersOf);
  }

  private static void append(List<Integer> ring, int number) {
    if (ring.isEmpty() || ring.get(ring.size() - 1) != number) {
      ring.add(number);
    }
  }

  static int[] turned(int[] ring) {
    int[] back = new int[ring.length];
    for (int i = 0; i < ring.length; i++) {
      back[i] = ring[ring.length - 1 - i];
    }
    return back;
  }

  /** The number of a point, or of a vertex at a point. */
  private int number(long id, Entity of) {
    Integer known = numbers.get(id);
    if (known != null) {
      return known;
    }
    Entity at = of.model().get(id);
    Vec3 point = axes.point(at.isA("IfcVertexPoint") ? at.need("VertexGeometry") : at);
    points.add(point);
    numbers.put(id, points.size() - 1);
    return points.size() - 1;
  }

  Shape build(boolean closed, Entity of) {
    if (faces.isEmpty()) {
      throw of.broken("it has no face of three points");
    }
    return new Shape.Mesh(points, faces, closed);
  }
}
