package org.coatrun.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * What is left of a region while others are taken away from it, and what they took. Regions of few
 * corners are kept as convex rings side by side: cutting those costs a fraction of an overlay. Not
 * for use by several threads.
 */
public final class Remains {

  private final Kernel kernel;
  private final Overlay overlay;
  private final List<Piece> taken = new ArrayList<>();
  private List<Piece> left = new ArrayList<>();
  private boolean whole = true;

  /** What lies outside a cover while a part is cut. */
  private final List<double[]> beyond = new ArrayList<>();

  /** Begins with all of a region. */
  public Remains(Geometry region, Kernel kernel) {
    this(kernel);
    add(region, left);
  }

  private Remains(Kernel kernel) {
    this.kernel = kernel;
    this.overlay = kernel.overlay;
  }

  /** Begins with all of a patch's region; of a plain face none need be made for it. */
  public static Remains of(Patch patch, Kernel kernel) {
    Optional<double[]> ring = patch.convexRing();
    if (ring.isEmpty()) {
      return new Remains(patch.region(), kernel);
    }
    Remains remains = new Remains(kernel);
    remains.left.add(Piece.of(ring.get()));
    return remains;
  }

  /** Whether nothing is left. */
  public boolean isEmpty() {
    return left.isEmpty();
  }

  /** What is left by now. */
  public Remainder remainder() {
    return new Remainder(whole, left, taken);
  }

  /** Whether nothing was taken. */
  public boolean isWhole() {
    return whole;
  }

  /** The area of what is left, m². */
  public double area() {
    double area = 0;
    for (Piece piece : left) {
      area += piece.area();
    }
    return area;
  }

  /** The box about what is left: least u and v, greatest u and v. */
  public double[] window() {
    Extent2 box = left.get(0).box();
    for (Piece part : left) {
      box = box.plus(part.box());
    }
    return new double[] {box.minU(), box.minV(), box.maxU(), box.maxV()};
  }

  /**
   * Takes a region away.
   *
   * @return the area that it took, m²
   */
  public double less(Geometry cover) {
    double area = 0;
    for (int i = 0; i < cover.getNumGeometries(); i++) {
      if (cover.getGeometryN(i) instanceof Polygon p && !p.isEmpty()) {
        area += less(new Cover(p));
      }
    }
    return area;
  }

  /**
   * Takes away what a body fills just in front of the plane that the region lies in.
   *
   * @param plane on whose axes the region is
   * @param near a box about the region
   * @param moved how far the body stands from where it was made
   * @return the area that it took, m²
   */
  public double less(Originals body, Plane plane, Box near, Vec3 moved) {
    Optional<Solid> convex = body.convex();
    if (convex.isEmpty()) {
      return less(body.fill(kernel, plane, 1, near, window(), moved));
    }
    ConvexCover fill = ConvexCover.of(convex.get(), plane, moved, kernel.tolerance.plane());
    return fill == null ? 0 : less(new Cover(fill));
  }

  /** The middle of what is left and lies in a region, u and v; empty where nothing does. */
  public Optional<Vec2> middleWithin(Geometry region) {
    List<double[]> own = new ArrayList<>();
    left.forEach(piece -> piece.convex(own));
    double area = 0;
    double u = 0;
    double v = 0;
    for (double[] other : ConvexParts.of(region)) {
      for (double[] ring : own) {
        double[] shared = ConvexClip.common(ring, other);
        if (!overlay.isNothing(shared)) {
          double weight = Rings.area(shared);
          Vec2 middle = Rings.middle(shared);
          area += weight;
          u += weight * middle.x();
          v += weight * middle.y();
        }
      }
    }
    return area > 0 ? Optional.of(new Vec2(u / area, v / area)) : Optional.empty();
  }

  /** What is taken away, in the form that is cut with. */
  private static final class Cover {

    /** Null where a convex one says it all. */
    private final Polygon polygon;

    private final Extent2 box;
    private final ConvexCover convex;
    private final ConvexTree tree;

    private Cover(Polygon polygon) {
      this.polygon = polygon;
      this.box = Extent2.of(polygon);
      double[] ring = ConvexClip.ring(polygon);
      this.convex = ring == null ? null : ConvexCover.of(ring);
      this.tree = ring == null ? ConvexTree.of(polygon).orElse(null) : null;
    }

    private Cover(ConvexCover convex) {
      this.polygon = null;
      this.box = null;
      this.convex = convex;
      this.tree = null;
    }

    /** As a polygon, as far as a box reaches at least. */
    private Polygon about(Extent2 part) {
      return polygon != null ? polygon : convex.in(part);
    }
  }

  private double less(Cover cover) {
    double area = 0;
    List<Piece> next = new ArrayList<>();
    for (Piece part : left) {
      boolean apart = cover.box != null && overlay.apart(part.box(), cover.box);
      area += apart ? kept(part, next) : less(part, cover, next);
    }
    if (area > 0) {
      left = next;
      whole = false;
    }
    return area;
  }

  private static double kept(Piece part, List<Piece> next) {
    next.add(part);
    return 0;
  }

  /** Adds what is left of a part to the next ones, and tells the area that was taken. */
  private double less(Piece part, Cover cover, List<Piece> next) {
    if (cover.convex == null && cover.tree == null) {
      return overlaid(part, cover.polygon, next);
    }
    if (part.ring != null) {
      return cut(part, cover, next);
    }
    Optional<ConvexTree> tree = part.tree();
    return tree.isPresent()
        ? parted(part, tree.get(), cover, next)
        : overlaid(part, cover.about(part.box()), next);
  }

  private double parted(Piece part, ConvexTree tree, Cover cover, List<Piece> next) {
    List<Piece> rest = new ArrayList<>();
    double area = 0;
    for (double[] ring : tree.parts()) {
      area += cut(Piece.of(ring), cover, rest);
    }
    if (area == 0) {
      return kept(part, next);
    }
    next.addAll(rest);
    return area;
  }

  private double cut(Piece part, Cover cover, List<Piece> next) {
    return cover.convex == null ? cut(part, cover.tree, next) : cut(part, cover.convex, next);
  }

  private double cut(Piece part, ConvexTree cover, List<Piece> next) {
    List<double[]> shared = new ArrayList<>();
    cover.common(part.ring, shared);
    double common = shared.stream().mapToDouble(Rings::area).sum();
    if (overlay.isNoise(common, Rings.length(part.ring))) {
      return kept(part, next);
    }
    added(shared, taken);
    List<double[]> rest = new ArrayList<>();
    cover.less(part.ring, rest);
    return part.area() - added(rest, next);
  }

  private double cut(Piece part, ConvexCover cover, List<Piece> next) {
    beyond.clear();
    double[] shared = cover.cut(part.ring, overlay.thin(), beyond);
    if (overlay.isNothing(shared)) {
      return kept(part, next);
    }
    double area = part.area();
    if (overlay.isThin(area - Rings.area(shared), Rings.length(part.ring))) {
      taken.add(part);
      return area;
    }
    taken.add(Piece.of(shared));
    return area - added(beyond, next);
  }

  /** Adds the rings that are more than noise, and tells their area. */
  private double added(List<double[]> rings, List<Piece> to) {
    double sum = 0;
    for (double[] ring : rings) {
      double area = Rings.area(ring);
      if (!overlay.isNoise(area, Rings.length(ring))) {
        to.add(Piece.of(ring));
        sum += area;
      }
    }
    return sum;
  }

  private double overlaid(Piece part, Polygon cover, List<Piece> next) {
    Polygon polygon = part.polygon();
    Geometry common = overlay.common(polygon, cover);
    if (common.isEmpty()) {
      return kept(part, next);
    }
    add(common, taken);
    return part.area() - add(overlay.less(polygon, cover), next);
  }

  private static double add(Geometry g, List<Piece> to) {
    double area = 0;
    for (int i = 0; i < g.getNumGeometries(); i++) {
      if (g.getGeometryN(i) instanceof Polygon p && !p.isEmpty()) {
        to.add(Piece.of(p));
        area += p.getArea();
      }
    }
    return area;
  }
}
