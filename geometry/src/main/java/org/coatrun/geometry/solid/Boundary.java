package org.coatrun.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * The surface of a body: of each face of each original what separates filled from empty.
 *
 * <p>With f a face, just behind its plane the body fills T⁻ and just in front T⁺: f ∩ (T⁻ − T⁺)
 * stays as it is and f ∩ (T⁺ − T⁻) stays turned round. Where originals share a plane the first one
 * answers for the place, so that it is counted once. This holds for unions, intersections and
 * differences nested as deep as one likes, and no result is ever sliced.
 */
public final class Boundary {

  private static final double SAME_PLANE = 1 - 5e-11;

  private final List<Patch> patches;
  private final double area;
  private final double volume;
  private final double gape;

  private Boundary(List<Patch> patches, Box box) {
    this.patches = List.copyOf(patches);
    double sum = 0;
    double flat = 0;
    double moment = 0;
    double nx = 0;
    double ny = 0;
    double nz = 0;
    for (Patch p : patches) {
      double a = p.flatArea();
      sum += p.area();
      flat += a;
      moment -= a * p.plane().height(box.centreX(), box.centreY(), box.centreZ());
      nx += a * p.plane().nx();
      ny += a * p.plane().ny();
      nz += a * p.plane().nz();
    }
    this.area = sum;
    this.volume = moment / 3;
    this.gape = flat == 0 ? 0 : Math.sqrt(nx * nx + ny * ny + nz * nz) / flat;
  }

  /** The surface of a body. */
  public static Boundary of(Originals originals, Kernel kernel) {
    List<Patch> out = new ArrayList<>();
    Solid[] leaves = originals.leaves;
    for (int i = 0; i < leaves.length; i++) {
      for (Face f : leaves[i].faces) {
        face(originals, kernel, i, f, out);
      }
    }
    return new Boundary(out, originals.bounds());
  }

  public List<Patch> patches() {
    return patches;
  }

  /** Area, curved strips at their true area, m². */
  public double area() {
    return area;
  }

  /** Enclosed volume, m³; meaningless where an original is open. */
  public double volume() {
    return volume;
  }

  /** |Σ A n| / Σ A: nought for a closed surface. Does not see films between opposite faces. */
  public double gape() {
    return gape;
  }

  private static void face(Originals originals, Kernel kernel, int leaf, Face f, List<Patch> out) {
    Solid solid = originals.leaves[leaf];
    if (originals.leaves.length == 1) {
      out.add(Patch.whole(solid, f, leaf));
      return;
    }
    if (!f.bounds().overlaps(originals.bounds(), kernel.tolerance.weld())) {
      return;
    }
    Geometry whole = Rings.ofFace(solid, f, f.plane());
    Geometry region = firstHere(originals, kernel, leaf, f, whole);
    if (!region.isEmpty()) {
      keep(originals, kernel, leaf, f, whole, region, out);
    }
  }

  private static void keep(
      Originals originals,
      Kernel kernel,
      int leaf,
      Face f,
      Geometry whole,
      Geometry region,
      List<Patch> out) {
    Solid solid = originals.leaves[leaf];
    double[] window = window(region);
    Plane p = f.plane();
    Geometry behind = originals.fillAtFace(kernel, p, -1, region, f.bounds(), window, leaf);
    Geometry front = originals.fillAtFace(kernel, p, 1, region, f.bounds(), window, leaf);
    boolean full = Originals.isFull(behind);
    if (full && front.isEmpty() && !Originals.isFull(front)) {
      out.add(
          region.getArea() == whole.getArea()
              ? Patch.whole(solid, f, leaf)
              : Patch.part(solid, f, leaf, region));
      return;
    }
    Overlay overlay = kernel.overlay;
    Geometry a = full ? region : behind.isEmpty() ? behind : overlay.common(region, behind);
    Geometry b =
        Originals.isFull(front) ? region : front.isEmpty() ? front : overlay.common(region, front);
    Geometry same = overlay.less(a, b);
    Geometry back = overlay.less(b, a);
    if (!same.isEmpty()) {
      out.add(Patch.part(solid, f, leaf, same));
    }
    if (!back.isEmpty()) {
      out.add(Patch.turned(solid, f, leaf, back));
    }
  }

  /** The face less what faces of earlier originals in the same plane answer for. */
  private static Geometry firstHere(
      Originals originals, Kernel kernel, int leaf, Face f, Geometry whole) {
    Geometry region = whole;
    for (int j = 0; j < leaf && !region.isEmpty(); j++) {
      Solid earlier = originals.leaves[j];
      if (!earlier.bounds().overlaps(f.bounds(), kernel.tolerance.weld())) {
        continue;
      }
      for (Face g : earlier.faces) {
        if (Math.abs(g.plane().dot(f.plane())) > SAME_PLANE
            && g.bounds().overlaps(f.bounds(), kernel.tolerance.weld())
            && lies(earlier, g, f.plane(), 2 * kernel.tolerance.plane())) {
          region = kernel.overlay.less(region, Rings.ofFace(earlier, g, f.plane()));
        }
      }
    }
    return region;
  }

  private static boolean lies(Solid solid, Face g, Plane plane, double near) {
    for (int[] ring : g.loops) {
      for (int v : ring) {
        if (Math.abs(plane.height(solid.x(v), solid.y(v), solid.z(v))) > near) {
          return false;
        }
      }
    }
    return true;
  }

  static double[] window(Geometry g) {
    Envelope e = g.getEnvelopeInternal();
    return new double[] {e.getMinX(), e.getMinY(), e.getMaxX(), e.getMaxY()};
  }
}
