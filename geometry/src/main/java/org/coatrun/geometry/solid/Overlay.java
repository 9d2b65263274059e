package org.coatrun.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.noding.snap.SnappingNoder;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.util.AssertionFailedException;

/**
 * Differences, intersections and unions of regions: boxes first, small convex polygons by hand, the
 * rest by a snapping overlay with fallbacks. Results are areas only; slivers thinner than the
 * tolerance are dropped.
 */
public final class Overlay {

  /** No area. */
  public static final Geometry EMPTY = Rings.FACTORY.createPolygon();

  /** Shared areas smaller than this part of a sliver are the noise of where edges meet. */
  private static final double NOISE = 1e-3;

  private final double snap;
  private final double thin;
  private long fallbacks;

  Overlay(Tolerance tolerance) {
    this.snap = tolerance.snap();
    this.thin = 2 * tolerance.plane();
  }

  /** Overlays so far that the first way could not do. */
  public long fallbacks() {
    return fallbacks;
  }

  /** What both share. */
  public Geometry common(Geometry a, Geometry b) {
    if (apart(a, b)) {
      return EMPTY;
    }
    if (a.getNumGeometries() > 1 || b.getNumGeometries() > 1) {
      return piecewise(a, b);
    }
    double[] ra = ConvexClip.ring(a);
    double[] rb = ConvexClip.ring(b);
    if (rb != null && a instanceof Polygon p && ConvexClip.holds(rb, p, 0.5 * thin)) {
      return a;
    }
    if (ra != null && rb != null) {
      return polygon(ConvexClip.common(ra, rb));
    }
    return switch (shared(a, ra, b, rb)) {
      case NOTHING -> EMPTY;
      case ALL_OF_A -> a;
      case ALL_OF_B -> b;
      case SOME -> overlay(a, b, OverlayNG.INTERSECTION);
    };
  }

  /** What is in the first and not in the second. */
  public Geometry less(Geometry a, Geometry b) {
    if (apart(a, b)) {
      return a;
    }
    if (a.getNumGeometries() > 1) {
      List<Polygon> out = new ArrayList<>();
      for (int i = 0; i < a.getNumGeometries(); i++) {
        add(out, less(a.getGeometryN(i), b));
      }
      return gathered(out);
    }
    if (b.getNumGeometries() > 1) {
      Geometry rest = a;
      for (int i = 0; i < b.getNumGeometries() && !rest.isEmpty(); i++) {
        rest = less(rest, b.getGeometryN(i));
      }
      return rest;
    }
    double[] ra = ConvexClip.ring(a);
    double[] rb = ConvexClip.ring(b);
    if (rb != null && a instanceof Polygon p && ConvexClip.holds(rb, p, 0.5 * thin)) {
      return EMPTY;
    }
    if (ra != null && rb != null) {
      double[] shared = ConvexClip.common(ra, rb);
      if (isNothing(shared)) {
        return a;
      }
      if (isThin(Rings.area(ra) - Rings.area(shared), Rings.length(ra))) {
        return EMPTY;
      }
      double[][] parted = ConvexClip.less(ra, rb, thin);
      if (parted != null) {
        List<Polygon> out = new ArrayList<>();
        for (double[] ring : parted) {
          add(out, polygon(ring));
        }
        return gathered(out);
      }
    }
    return switch (shared(a, ra, b, rb)) {
      case NOTHING -> a;
      case ALL_OF_A -> EMPTY;
      case ALL_OF_B, SOME -> overlay(a, b, OverlayNG.DIFFERENCE);
    };
  }

  private enum Shared {
    NOTHING,
    ALL_OF_A,
    ALL_OF_B,
    SOME
  }

  /** What two regions share, where one of them is convex: by far the most need no overlay then. */
  private Shared shared(Geometry a, double[] ra, Geometry b, double[] rb) {
    if (ra != null && b instanceof Polygon p) {
      return shared(ra, p, Shared.ALL_OF_A);
    }
    if (rb != null && a instanceof Polygon p) {
      return shared(rb, p, Shared.ALL_OF_B);
    }
    return Shared.SOME;
  }

  private Shared shared(double[] convex, Polygon region, Shared all) {
    double area = ConvexClip.sharedArea(convex, region);
    double length = Rings.length(convex);
    if (isNoise(area, length)) {
      return Shared.NOTHING;
    }
    return isNoise(Rings.area(convex) - area, length) ? all : Shared.SOME;
  }

  /** What is in either. */
  public Geometry sum(Geometry a, Geometry b) {
    if (a.isEmpty()) {
      return b;
    }
    if (b.isEmpty()) {
      return a;
    }
    return overlay(a, b, OverlayNG.UNION);
  }

  /** Parts of a region lie apart, so what two regions share is what their parts share. */
  private Geometry piecewise(Geometry a, Geometry b) {
    List<Polygon> out = new ArrayList<>();
    for (int i = 0; i < a.getNumGeometries(); i++) {
      for (int j = 0; j < b.getNumGeometries(); j++) {
        add(out, common(a.getGeometryN(i), b.getGeometryN(j)));
      }
    }
    return gathered(out);
  }

  private static void add(List<Polygon> out, Geometry g) {
    for (int i = 0; i < g.getNumGeometries(); i++) {
      if (g.getGeometryN(i) instanceof Polygon p && !p.isEmpty()) {
        out.add(p);
      }
    }
  }

  static Geometry gathered(List<Polygon> kept) {
    if (kept.isEmpty()) {
      return EMPTY;
    }
    return kept.size() == 1
        ? kept.get(0)
        : Rings.FACTORY.createMultiPolygon(kept.toArray(new Polygon[0]));
  }

  private boolean apart(Geometry a, Geometry b) {
    return a.isEmpty() || b.isEmpty() || apart(Extent2.of(a), Extent2.of(b));
  }

  private Geometry polygon(double[] ring) {
    return isNothing(ring) ? EMPTY : Rings.FACTORY.createPolygon(Rings.linear(ring));
  }

  boolean isNothing(double[] ring) {
    return ring == null || isThin(Rings.area(ring), Rings.length(ring));
  }

  boolean isThin(double area, double length) {
    return area <= 0.5 * thin * length;
  }

  /** Whether an area is the rounding of where edges of a length meet. */
  boolean isNoise(double area, double length) {
    return area <= NOISE * thin * length;
  }

  /** What is not wider is nothing, m. */
  double thin() {
    return thin;
  }

  boolean apart(Extent2 a, Extent2 b) {
    return a.isApart(b, thin);
  }

  private Geometry overlay(Geometry a, Geometry b, int operation) {
    try {
      return cleaned(OverlayNG.overlay(a, b, operation, null, new SnappingNoder(snap)));
    } catch (TopologyException | IllegalArgumentException | AssertionFailedException e) {
      fallbacks++;
      return again(a, b, operation);
    }
  }

  private Geometry again(Geometry a, Geometry b, int operation) {
    Geometry fa = GeometryFixer.fix(a);
    Geometry fb = GeometryFixer.fix(b);
    try {
      return cleaned(OverlayNGRobust.overlay(fa, fb, operation));
    } catch (TopologyException | IllegalArgumentException | AssertionFailedException e) {
      return coarser(fa, fb, operation);
    }
  }

  private Geometry coarser(Geometry a, Geometry b, int operation) {
    try {
      return cleaned(OverlayNG.overlay(a, b, operation, null, new SnappingNoder(10 * snap)));
    } catch (TopologyException | IllegalArgumentException | AssertionFailedException e) {
      return cleaned(OverlayNG.overlay(a, b, operation, new PrecisionModel(1 / (10 * snap))));
    }
  }

  /** Polygons that are more than slivers. */
  private Geometry cleaned(Geometry g) {
    if (g instanceof Polygon p) {
      return p.isEmpty() || isThin(p.getArea(), p.getLength()) ? EMPTY : p;
    }
    List<Polygon> kept = new ArrayList<>();
    for (int i = 0; i < g.getNumGeometries(); i++) {
      if (g.getGeometryN(i) instanceof Polygon p && !isThin(p.getArea(), p.getLength())) {
        kept.add(p);
      }
    }
    return gathered(kept);
  }
}
