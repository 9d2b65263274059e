package org.coatrun.testmodels.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed body of flat faces that look outwards.
 *
 * @param points the corners, in metres
 * @param faces each face as positions in {@code points}, anticlockwise from outside
 */
public record Mesh(List<Vec3> points, List<int[]> faces) {
  public Mesh {
    points = List.copyOf(points);
    faces = List.copyOf(faces);
  }

  /** A prism over an anticlockwise outline, from z = 0 to the given height. */
  public static Mesh prism(List<Vec2> outline, double height) {
    return between(outline, 0, outline, height);
  }

  /** A body between two outlines of as many corners, for example a tapered member. */
  public static Mesh between(List<Vec2> bottom, double z0, List<Vec2> top, double z1) {
    int n = bottom.size();
    List<Vec3> points = new ArrayList<>();
    bottom.forEach(p -> points.add(new Vec3(p.x(), p.y(), z0)));
    top.forEach(p -> points.add(new Vec3(p.x(), p.y(), z1)));
    List<int[]> faces = new ArrayList<>();
    int[] start = new int[n];
    int[] end = new int[n];
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      start[i] = n - 1 - i;
      end[i] = n + i;
      faces.add(new int[] {i, next, n + next, n + i});
    }
    faces.add(start);
    faces.add(end);
    return new Mesh(points, faces);
  }

  /** Returns the same body with each face cut into triangles. */
  public Mesh triangulated() {
    List<int[]> triangles = new ArrayList<>();
    faces.forEach(face -> triangles.addAll(EarCut.triangles(points, face)));
    return new Mesh(points, triangles);
  }

  /** Returns the surface in square metres. */
  public double area() {
    return faces.stream().mapToDouble(f -> vectorArea(f).length()).sum();
  }

  /** Returns the volume in cubic metres, by the divergence theorem. */
  public double volume() {
    return faces.stream().mapToDouble(f -> vectorArea(f).dot(points.get(f[0]))).sum() / 3;
  }

  private Vec3 vectorArea(int[] face) {
    Vec3 sum = Vec3.ZERO;
    for (int i = 0; i < face.length; i++) {
      sum = sum.plus(points.get(face[i]).cross(points.get(face[(i + 1) % face.length])));
    }
    return sum.times(0.5);
  }
}
