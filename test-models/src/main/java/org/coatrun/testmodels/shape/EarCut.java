package org.coatrun.testmodels.shape;

import java.util.ArrayList;
import java.util.List;

/** Cuts a flat polygon without holes into triangles, ear by ear. */
final class EarCut {
  private final List<Vec3> points;
  private final List<Integer> left;
  private final Vec3 normal;

  private EarCut(List<Vec3> points, int[] face) {
    this.points = points;
    this.left = new ArrayList<>();
    Vec3 sum = Vec3.ZERO;
    for (int i = 0; i < face.length; i++) {
      left.add(face[i]);
      sum = sum.plus(points.get(face[i]).cross(points.get(face[(i + 1) % face.length])));
    }
    this.normal = sum.unit();
  }

  static List<int[]> triangles(List<Vec3> points, int[] face) {
    return new EarCut(points, face).cut();
  }

  private List<int[]> cut() {
    List<int[]> triangles = new ArrayList<>();
    while (left.size() > 3) {
      int ear = ear();
      triangles.add(new int[] {at(ear - 1), at(ear), at(ear + 1)});
      left.remove(ear);
    }
    triangles.add(new int[] {at(0), at(1), at(2)});
    return triangles;
  }

  private int ear() {
    for (int i = 0; i < left.size(); i++) {
      if (turn(at(i - 1), at(i), at(i + 1)) > 1e-15 && isEmpty(i)) {
        return i;
      }
    }
    throw new IllegalArgumentException("A face crosses itself");
  }

  private boolean isEmpty(int ear) {
    int a = at(ear - 1);
    int b = at(ear);
    int c = at(ear + 1);
    return left.stream()
        .filter(p -> p != a && p != b && p != c)
        .noneMatch(p -> turn(a, b, p) >= 0 && turn(b, c, p) >= 0 && turn(c, a, p) >= 0);
  }

  private double turn(int a, int b, int c) {
    Vec3 ab = points.get(b).minus(points.get(a));
    return ab.cross(points.get(c).minus(points.get(b))).dot(normal);
  }

  private int at(int i) {
    return left.get(Math.floorMod(i, left.size()));
  }
}
