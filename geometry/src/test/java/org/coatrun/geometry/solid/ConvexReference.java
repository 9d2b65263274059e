package org.coatrun.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.shape.Vec3;

/** What two convex solids share, by clipping polygons in space: nothing of the kernel is used. */
final class ConvexReference {

  /** Area of the faces of each inside the other, and the volume that both share. */
  record Shared(double firstInSecond, double secondInFirst, double volume) {}

  private ConvexReference() {}

  static Shared of(Solid a, Solid b) {
    double[] volume = new double[1];
    double ab = inside(a, b, volume);
    double ba = inside(b, a, volume);
    return new Shared(ab, ba, volume[0]);
  }

  private static double inside(Solid faces, Solid clip, double[] volume) {
    double area = 0;
    for (Face f : faces.faces()) {
      List<Vec3> ring = new ArrayList<>();
      for (int v : f.loop(0)) {
        ring.add(new Vec3(faces.x(v), faces.y(v), faces.z(v)));
      }
      for (Face g : clip.faces()) {
        ring = clipped(ring, g.plane());
      }
      Vec3 sum = Vec3.ZERO;
      for (int i = 1; i + 1 < ring.size(); i++) {
        Vec3 o = ring.get(0);
        sum = sum.plus(ring.get(i).minus(o).cross(ring.get(i + 1).minus(o)));
      }
      double one = 0.5 * sum.length();
      area += one;
      volume[0] += one * f.plane().offset() / 3;
    }
    return area;
  }

  private static List<Vec3> clipped(List<Vec3> ring, Plane p) {
    List<Vec3> out = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Vec3 a = ring.get(i);
      Vec3 b = ring.get((i + 1) % ring.size());
      double ha = p.height(a.x(), a.y(), a.z());
      double hb = p.height(b.x(), b.y(), b.z());
      if (ha <= 0) {
        out.add(a);
      }
      if (ha * hb < 0) {
        out.add(a.plus(b.minus(a).times(ha / (ha - hb))));
      }
    }
    return out;
  }
}
