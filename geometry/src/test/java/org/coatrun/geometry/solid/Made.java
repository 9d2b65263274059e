package org.coatrun.geometry.solid;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** Solids made for tests. */
final class Made {

  private Made() {}

  static Solid box(double x0, double y0, double z0, double x1, double y1, double z1) {
    return prism(new double[] {x0, y0, x1, y0, x1, y1, x0, y1}, z0, z1);
  }

  /** An upright prism on a counter-clockwise outline. */
  static Solid prism(double[] outline, double z0, double z1) {
    return prism(outline, z0, z1, 1);
  }

  static Solid prism(double[] outline, double z0, double z1, double stretch) {
    SolidBuilder b = new SolidBuilder();
    int n = outline.length / 2;
    int[] low = new int[n];
    int[] high = new int[n];
    for (int i = 0; i < n; i++) {
      low[i] = b.vertex(outline[2 * i], outline[2 * i + 1], z0);
    }
    for (int i = 0; i < n; i++) {
      high[i] = b.vertex(outline[2 * i], outline[2 * i + 1], z1);
    }
    b.face(FaceLabel.START, 1, Solids.backwards(low));
    b.face(FaceLabel.END, 1, high);
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      b.face(FaceLabel.side(i), stretch, new int[] {low[i], low[j], high[j], high[i]});
    }
    return b.build();
  }

  /** A regular n-gon of circumradius r about a point. */
  static double[] disc(double cx, double cy, double r, int n) {
    double[] out = new double[2 * n];
    for (int i = 0; i < n; i++) {
      out[2 * i] = cx + r * Math.cos(2 * Math.PI * i / n);
      out[2 * i + 1] = cy + r * Math.sin(2 * Math.PI * i / n);
    }
    return out;
  }

  /** Sharp-cornered I about the origin, depth along y. */
  static double[] iShape(double b, double h, double tw, double tf) {
    double x = b / 2;
    double y = h / 2;
    double w = tw / 2;
    double f = y - tf;
    return new double[] {
      -x, -y, x, -y, x, -f, w, -f, w, f, x, f, x, y, -x, y, -x, f, -w, f, -w, -f, -x, -f
    };
  }

  /** A turn about a random axis and a shift of up to ten metres. */
  static Transform3 rigid(Random random) {
    Vec3 z = direction(random);
    Vec3 origin = direction(random).times(10 * random.nextDouble());
    return Transform3.frame(origin, z, direction(random));
  }

  static Vec3 direction(Random random) {
    while (true) {
      Vec3 v =
          new Vec3(
              2 * random.nextDouble() - 1,
              2 * random.nextDouble() - 1,
              2 * random.nextDouble() - 1);
      if (v.length() > 0.1 && v.length() <= 1) {
        return v.unit();
      }
    }
  }

  static Boundary less(Solid host, Solid... cutters) {
    return boundary(
        new SolidTree.Difference(
            SolidTree.of(host), Arrays.stream(cutters).map(SolidTree::of).toList()));
  }

  static Boundary union(Solid... parts) {
    return boundary(new SolidTree.Union(Arrays.stream(parts).map(SolidTree::of).toList()));
  }

  static Boundary common(Solid a, Solid b) {
    return boundary(new SolidTree.Intersection(List.of(SolidTree.of(a), SolidTree.of(b))));
  }

  static Boundary boundary(SolidTree tree) {
    Kernel kernel = new Kernel(Tolerance.DEFAULT);
    return Boundary.of(Originals.of(tree, Tolerance.DEFAULT), kernel);
  }
}
