package org.coatrun.ifcimport.shape;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.ifcimport.part21.Value;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Vec3;

/** Face sets on a list of points. */
final class TessellationReader {

  private final Axes axes;

  TessellationReader(Axes axes) {
    this.axes = axes;
  }

  Shape triangulated(Entity set) {
    List<Vec3> points = PointLists.points(set.need("Coordinates"), axes);
    var faces = new ArrayList<Shape.MeshFace>();
    for (Value triangle : set.value("CoordIndex").items()) {
      addFace(faces, ring(set, triangle, points.size()), List.of());
    }
    return mesh(set, points, faces);
  }

  Shape polygonal(Entity set) {
    List<Vec3> points = PointLists.points(set.need("Coordinates"), axes);
    var faces = new ArrayList<Shape.MeshFace>();
    for (Entity face : set.needRefs("Faces")) {
      var holes = new ArrayList<int[]>();
      for (Value hole : face.value("InnerCoordIndices").items()) {
        holes.add(ring(set, hole, points.size()));
      }
      addFace(faces, ring(set, face.value("CoordIndex"), points.size()), holes);
    }
    return mesh(set, points, faces);
  }

  private static void addFace(List<Shape.MeshFace> faces, int[] outer, List<int[]> holes) {
    if (outer.length >= 3) {
      faces.add(new Shape.MeshFace(outer, holes.stream().filter(h -> h.length >= 3).toList()));
    }
  }

  private static Shape mesh(Entity set, List<Vec3> points, List<Shape.MeshFace> faces) {
    if (faces.isEmpty()) {
      throw set.broken("it has no faces");
    }
    return new Shape.Mesh(points, faces, closed(set));
  }

  /** Exporters swap Closed with its neighbour Normals; whichever holds a truth value counts. */
  private static boolean closed(Entity set) {
    return set.flag("Closed").or(() -> set.flag("Normals")).orElse(false);
  }

  /** Numbers of points, from 0; through PnIndex where the set has one; repeats dropped. */
  private static int[] ring(Entity set, Value indices, int points) {
    List<Value> through = set.value("PnIndex").items();
    var ring = new ArrayList<Integer>();
    for (Value index : indices.items()) {
      Value target = index;
      if (!through.isEmpty()) {
        target = through.get(PointLists.index(through.size(), index, set));
      }
      int number = PointLists.index(points, target, set);
      if (ring.isEmpty() || ring.get(ring.size() - 1) != number) {
        ring.add(number);
      }
    }
    if (ring.size() > 1 && ring.get(0).equals(ring.get(ring.size() - 1))) {
      ring.remove(ring.size() - 1);
    }
    return ring.stream().mapToInt(Integer::intValue).toArray();
  }
}
