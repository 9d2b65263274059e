package org.coatrun.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * The area that convex regions cover together: each counts for what those before it leave of it,
 * cut along their edges.
 */
public final class ConvexSum {

  /** Shared areas below this part of a region are the rounding of where two touch. */
  private static final double ROUNDING = 1e-14;

  private final List<double[]> rings = new ArrayList<>();
  private final List<Envelope> boxes = new ArrayList<>();

  /**
   * Adds a convex region.
   *
   * @param ring u and v of its corners in turn, counter-clockwise, the first not repeated; one
   *     without area is passed over
   */
  public void add(double... ring) {
    if (Rings.area(ring) > 0) {
      rings.add(ring);
      boxes.add(box(ring));
    }
  }

  /**
   * What all cover together outside of a region, in the square of their unit.
   *
   * @param thin what is shared with the region counts where it is wider than this, since contours
   *     that run along each other seldom do so to the last digit
   */
  public double areaOutside(Geometry region, double thin) {
    double sum = 0;
    for (int i = 0; i < rings.size(); i++) {
      for (double[] piece : left(i)) {
        double shared = shared(piece, boxes.get(i), region);
        sum += Rings.area(piece) - (shared > thin * Rings.length(piece) ? shared : 0);
      }
    }
    return sum;
  }

  /** What the regions before one leave of it. */
  private List<double[]> left(int i) {
    List<double[]> left = List.of(rings.get(i));
    for (int j = 0; j < i; j++) {
      if (boxes.get(j).intersects(boxes.get(i))) {
        left = less(left, rings.get(j));
      }
    }
    return left;
  }

  private static List<double[]> less(List<double[]> pieces, double[] ring) {
    ConvexCover cover = ConvexCover.of(ring);
    List<double[]> out = new ArrayList<>();
    for (double[] piece : pieces) {
      List<double[]> beyond = new ArrayList<>();
      double[] common = cover.cut(piece, 0, beyond);
      if (common == null || Rings.area(common) <= ROUNDING * Rings.area(piece)) {
        out.add(piece);
      } else {
        out.addAll(beyond);
      }
    }
    return out;
  }

  private static double shared(double[] piece, Envelope box, Geometry region) {
    double sum = 0;
    for (int i = 0; i < region.getNumGeometries(); i++) {
      if (region.getGeometryN(i) instanceof Polygon p && box.intersects(p.getEnvelopeInternal())) {
        sum += ConvexClip.sharedArea(piece, p);
      }
    }
    return sum;
  }

  private static Envelope box(double[] ring) {
    Envelope box = new Envelope();
    for (int i = 0; i < ring.length; i += 2) {
      box.expandToInclude(ring[i], ring[i + 1]);
    }
    return box;
  }
}
