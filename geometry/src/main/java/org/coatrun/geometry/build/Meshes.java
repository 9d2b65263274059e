package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.geometry.solid.FaceLabel;
import org.coatrun.geometry.solid.Solid;
import org.coatrun.geometry.solid.SolidBuilder;
import org.coatrun.geometry.solid.Welder;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/**
 * Solids of meshes: points welded, faces turned the same way round, those that lie in one plane
 * made one. A mesh that does not close has area but no inside, and is reported.
 */
final class Meshes {

  private static final double WELD = 1e-6;
  static final BuildResult.Note OPEN =
      new BuildResult.Note(
          SurfaceFinding.OPEN_SHELL,
          "The faces of the body do not close; its area counts, its volume does not.");

  private Meshes() {}

  static BuildResult.Built build(Shape.Mesh mesh, Transform3 at) {
    var builder = new SolidBuilder();
    var welder = new Welder(builder, WELD);
    var place = new ArrayList<Vec3>();
    var number = new int[mesh.points().size()];
    for (int i = 0; i < number.length; i++) {
      Vec3 p = at.apply(mesh.points().get(i));
      number[i] = welder.vertex(p.x(), p.y(), p.z());
      if (number[i] == place.size()) {
        place.add(p);
      }
    }
    List<int[][]> faces = new ArrayList<>();
    for (Shape.MeshFace face : mesh.faces()) {
      int[][] loops = loops(face, number);
      if (loops.length > 0) {
        faces.add(loops);
      }
    }
    turnAlike(faces);
    List<BuildResult.Note> notes = new ArrayList<>(CrossedFaces.notes(faces, place));
    for (int[][] loops : CoplanarFaces.merged(faces, place)) {
      builder.face(FaceLabel.MESH, 1, loops);
    }
    Solid solid = builder.build();
    if (!solid.closed()) {
      notes.add(OPEN);
    }
    return new BuildResult.Built(List.of(Part.of(solid, 1)), Optional.empty(), notes);
  }

  private static int[][] loops(Shape.MeshFace face, int[] number) {
    var out = new ArrayList<int[]>();
    int[] outer = welded(face.outer(), number);
    if (outer.length < 3) {
      return new int[0][];
    }
    out.add(outer);
    for (int[] hole : face.holes()) {
      int[] ring = welded(hole, number);
      if (ring.length >= 3) {
        out.add(ring);
      }
    }
    return out.toArray(new int[0][]);
  }

  private static int[] welded(int[] ring, int[] number) {
    var out = new int[ring.length];
    int n = 0;
    for (int v : ring) {
      if (v < 0 || v >= number.length) {
        throw new NotBuildableException(
            SurfaceFinding.NOT_MEASURED, "mesh", "A face of the mesh names a missing point.");
      }
      if (n == 0 || out[n - 1] != number[v]) {
        out[n++] = number[v];
      }
    }
    while (n > 1 && out[n - 1] == out[0]) {
      n--;
    }
    return java.util.Arrays.copyOf(out, n);
  }

  /** One use of an edge: by which face, and whether from its lower vertex to its higher. */
  private record Use(int face, boolean up) {}

  /** Turns faces so that neighbours run along their common edge in opposite ways. */
  private static void turnAlike(List<int[][]> faces) {
    Map<Long, List<Use>> edges = edges(faces);
    boolean alike =
        edges.values().stream().allMatch(u -> u.size() != 2 || u.get(0).up() != u.get(1).up());
    if (alike) {
      return;
    }
    var seen = new boolean[faces.size()];
    var turned = new boolean[faces.size()];
    for (int i = 0; i < seen.length; i++) {
      if (!seen[i]) {
        flood(i, faces, edges, seen, turned);
      }
    }
    for (int i = 0; i < turned.length; i++) {
      if (turned[i]) {
        faces.set(i, backwards(faces.get(i)));
      }
    }
  }

  private static void flood(
      int from, List<int[][]> faces, Map<Long, List<Use>> edges, boolean[] seen, boolean[] turned) {
    var open = new java.util.ArrayDeque<Integer>();
    open.add(from);
    seen[from] = true;
    while (!open.isEmpty()) {
      int i = open.remove();
      for (int[] ring : faces.get(i)) {
        for (int k = 0; k < ring.length; k++) {
          List<Use> uses = edges.get(key(ring[k], ring[(k + 1) % ring.length]));
          if (uses.size() == 2) {
            Use other = uses.get(0).face() == i ? uses.get(1) : uses.get(0);
            if (!seen[other.face()]) {
              boolean same = uses.get(0).up() == uses.get(1).up();
              turned[other.face()] = turned[i] != same;
              seen[other.face()] = true;
              open.add(other.face());
            }
          }
        }
      }
    }
  }

  private static Map<Long, List<Use>> edges(List<int[][]> faces) {
    var out = new HashMap<Long, List<Use>>();
    for (int i = 0; i < faces.size(); i++) {
      for (int[] ring : faces.get(i)) {
        for (int k = 0; k < ring.length; k++) {
          int a = ring[k];
          int b = ring[(k + 1) % ring.length];
          out.computeIfAbsent(key(a, b), x -> new ArrayList<>(2)).add(new Use(i, a < b));
        }
      }
    }
    return out;
  }

  static long key(int a, int b) {
    return (long) Math.min(a, b) << 32 | Math.max(a, b);
  }

  private static int[][] backwards(int[][] loops) {
    var out = new int[loops.length][];
    for (int i = 0; i < loops.length; i++) {
      out[i] = new int[loops[i].length];
      for (int k = 0; k < out[i].length; k++) {
        out[i][k] = loops[i][out[i].length - 1 - k];
      }
    }
    return out;
  }
}
