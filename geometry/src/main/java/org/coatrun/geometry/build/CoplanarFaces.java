package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coatrun.shared.shape.Vec3;

/**
 * Makes one face of neighbouring faces in one plane, so that triangles of a flat side do not count
 * as so many faces. Groups whose outline is not one ring with holes stay as they were.
 */
final class CoplanarFaces {

  private static final double SAME_DIRECTION = 1 - 1e-8;
  private static final double ON_PLANE = 5e-7;

  private final List<int[][]> faces;
  private final List<Vec3> place;
  private final Vec3[] normals;
  private final int[] group;

  private CoplanarFaces(List<int[][]> faces, List<Vec3> place) {
    this.faces = faces;
    this.place = place;
    this.normals = new Vec3[faces.size()];
    this.group = new int[faces.size()];
    for (int i = 0; i < normals.length; i++) {
      normals[i] = areaVector(faces.get(i)[0]).unit();
      group[i] = -1;
    }
  }

  static List<int[][]> merged(List<int[][]> faces, List<Vec3> place) {
    return new CoplanarFaces(faces, place).merged();
  }

  private List<int[][]> merged() {
    Map<Long, List<Integer>> byEdge = byEdge();
    var out = new ArrayList<int[][]>();
    for (int i = 0; i < faces.size(); i++) {
      if (group[i] < 0 && normals[i].length() > 0) {
        List<Integer> members = grow(i, byEdge);
        emit(members, normals[i], out);
      }
    }
    for (int i = 0; i < faces.size(); i++) {
      if (group[i] < 0) {
        out.add(faces.get(i));
      }
    }
    return out;
  }

  private Map<Long, List<Integer>> byEdge() {
    var out = new HashMap<Long, List<Integer>>();
    for (int i = 0; i < faces.size(); i++) {
      for (int[] ring : faces.get(i)) {
        for (int k = 0; k < ring.length; k++) {
          long key = Meshes.key(ring[k], ring[(k + 1) % ring.length]);
          out.computeIfAbsent(key, x -> new ArrayList<>(2)).add(i);
        }
      }
    }
    return out;
  }

  /** The faces that can be reached from a seed without leaving its plane. */
  private List<Integer> grow(int seed, Map<Long, List<Integer>> byEdge) {
    var members = new ArrayList<Integer>();
    members.add(seed);
    group[seed] = seed;
    Vec3 on = place.get(faces.get(seed)[0][0]);
    for (int m = 0; m < members.size(); m++) {
      for (int[] ring : faces.get(members.get(m))) {
        for (int k = 0; k < ring.length; k++) {
          List<Integer> sharing = byEdge.get(Meshes.key(ring[k], ring[(k + 1) % ring.length]));
          if (sharing.size() == 2) {
            int other = sharing.get(0).equals(members.get(m)) ? sharing.get(1) : sharing.get(0);
            if (group[other] < 0 && lies(other, on, normals[seed])) {
              group[other] = seed;
              members.add(other);
            }
          }
        }
      }
    }
    return members;
  }

  private boolean lies(int face, Vec3 on, Vec3 normal) {
    boolean sliver = normals[face].length() == 0;
    if (!sliver && normals[face].dot(normal) < SAME_DIRECTION) {
      return false;
    }
    for (int[] ring : faces.get(face)) {
      for (int v : ring) {
        if (Math.abs(place.get(v).minus(on).dot(normal)) > ON_PLANE) {
          return false;
        }
      }
    }
    return true;
  }

  private void emit(List<Integer> members, Vec3 normal, List<int[][]> out) {
    int[][] one = members.size() == 1 ? faces.get(members.get(0)) : outline(members, normal);
    if (one.length > 0) {
      out.add(one);
    } else {
      members.forEach(m -> out.add(faces.get(m)));
    }
  }

  /** Outer ring and holes of a group, or nothing where that is not what it has. */
  private int[][] outline(List<Integer> members, Vec3 normal) {
    var next = new LinkedHashMap<Integer, Integer>();
    if (!collect(members, next)) {
      return new int[0][];
    }
    var rings = new ArrayList<int[]>();
    int outers = 0;
    while (!next.isEmpty()) {
      int[] ring = ring(next);
      if (ring.length < 3) {
        return new int[0][];
      }
      boolean outer = areaVector(ring).dot(normal) > 0;
      outers += outer ? 1 : 0;
      rings.add(outer ? 0 : rings.size(), ring);
    }
    return outers == 1 ? rings.toArray(new int[0][]) : new int[0][];
  }

  /** Edges that only one member uses, by their start; false where two start at one vertex. */
  private boolean collect(List<Integer> members, Map<Integer, Integer> next) {
    var directed = new HashSet<Long>();
    for (int m : members) {
      for (int[] ring : faces.get(m)) {
        for (int k = 0; k < ring.length; k++) {
          long back = (long) ring[(k + 1) % ring.length] << 32 | ring[k];
          if (!directed.remove(back)) {
            directed.add((long) ring[k] << 32 | ring[(k + 1) % ring.length]);
          }
        }
      }
    }
    List<Long> sorted = directed.stream().sorted().toList();
    for (long edge : sorted) {
      if (next.put((int) (edge >> 32), (int) edge) != null) {
        return false;
      }
    }
    return true;
  }

  private static int[] ring(Map<Integer, Integer> next) {
    var ring = new ArrayList<Integer>();
    int start = next.keySet().iterator().next();
    Integer v = start;
    do {
      ring.add(v);
      v = next.remove(v);
    } while (v != null && v != start);
    return v == null ? new int[0] : ring.stream().mapToInt(Integer::intValue).toArray();
  }

  private Vec3 areaVector(int[] ring) {
    Vec3 o = place.get(ring[0]);
    Vec3 sum = Vec3.ZERO;
    for (int i = 1; i + 1 < ring.length; i++) {
      sum = sum.plus(place.get(ring[i]).minus(o).cross(place.get(ring[i + 1]).minus(o)));
    }
    return sum;
  }
}
