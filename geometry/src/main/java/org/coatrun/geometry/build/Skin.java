package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.geometry.solid.FaceLabel;
import org.coatrun.geometry.solid.Solid;
import org.coatrun.geometry.solid.SolidBuilder;
import org.coatrun.geometry.solid.Welder;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/**
 * Lays the faces of a sweep: polygons of one region at each station, joined side by side, and its
 * two ends.
 *
 * @param stations where the polygons stand; their area, not their place, is exact in between
 * @param sheets the true way between stations: one for each gap, or a single one that holds for all
 * @param looped whether the last station joins the first, so that there are no ends
 * @param hollow whether holes are the inside of a hollow section
 * @param weld whether stations may share points, as on an axis
 */
record Skin(
    List<Transform3> stations,
    List<? extends Sheet> sheets,
    boolean looped,
    boolean hollow,
    boolean weld) {

  private static final double SAME_POINT = 1e-9;

  /**
   * The solid of one region.
   *
   * @param lofts outer ring first, then holes
   * @param firstEdge number of the region's first profile edge
   */
  Solid solid(List<Loft> lofts, int firstEdge) {
    var builder = new SolidBuilder();
    var welder = new Welder(builder, SAME_POINT);
    int n = stations.size();
    var rings = new int[n][lofts.size()][];
    for (int k = 0; k < n; k++) {
      for (int r = 0; r < lofts.size(); r++) {
        rings[k][r] = vertices(builder, welder, lofts.get(r), k);
      }
    }
    if (!looped) {
      builder.face(FaceLabel.START, 1, backwards(rings[0]));
      builder.face(FaceLabel.END, 1, rings[n - 1]);
    }
    int edge = firstEdge;
    for (int r = 0; r < lofts.size(); r++) {
      sides(builder, lofts.get(r), rings, r, edge);
      edge += lofts.get(r).start().pieces().size();
    }
    return builder.build();
  }

  private int[] vertices(SolidBuilder builder, Welder welder, Loft loft, int k) {
    var ring = new int[loft.size()];
    double f = fraction(k);
    Transform3 place = stations.get(k);
    for (int j = 0; j < ring.length; j++) {
      Vec2 c = loft.corner(j, f);
      Vec3 p = place.apply(new Vec3(c.x(), c.y(), 0));
      ring[j] = weld ? welder.vertex(p.x(), p.y(), p.z()) : builder.vertex(p.x(), p.y(), p.z());
    }
    return ring;
  }

  private void sides(SolidBuilder builder, Loft loft, int[][][] rings, int r, int firstEdge) {
    int gaps = looped ? stations.size() : stations.size() - 1;
    boolean even = sheets.size() == 1 && loft.same();
    for (int j = 0; j < loft.size(); j++) {
      FaceLabel label = label(r, firstEdge + loft.piece(j));
      double area = Double.NaN;
      for (int k = 0; k < gaps; k++) {
        int next = (k + 1) % stations.size();
        int[] quad = quad(rings[k][r], rings[next][r], j);
        Sheet sheet = sheets.get(sheets.size() == 1 ? 0 : k);
        if (loft.flatSide(j) && sheet.straight()) {
          builder.face(label, 1, quad);
        } else {
          area = even && k > 0 ? area : loft.area(j, sheet, fraction(k), fraction(k + 1));
          double flat = flatArea(loft, j, k, next);
          if (flat > 0 && area > 0) {
            builder.face(label, area / flat, quad);
          }
        }
      }
    }
  }

  /** Newell area of the quad, as the builder will find it. */
  private double flatArea(Loft loft, int j, int k, int next) {
    int j1 = (j + 1) % loft.size();
    Vec3 a = place(loft, j, k);
    Vec3 b = place(loft, j1, k);
    Vec3 c = place(loft, j1, next);
    Vec3 d = place(loft, j, next);
    return 0.5 * c.minus(a).cross(d.minus(b)).length();
  }

  private Vec3 place(Loft loft, int j, int k) {
    Vec2 c = loft.corner(j, fraction(k));
    return stations.get(k).apply(new Vec3(c.x(), c.y(), 0));
  }

  private double fraction(int k) {
    return (double) k / (looped ? stations.size() : stations.size() - 1);
  }

  private FaceLabel label(int ring, int edge) {
    if (ring == 0) {
      return FaceLabel.side(edge);
    }
    return hollow ? FaceLabel.innerSide(edge) : FaceLabel.CUT;
  }

  private static int[] quad(int[] here, int[] there, int j) {
    int j1 = (j + 1) % here.length;
    return new int[] {here[j], here[j1], there[j1], there[j]};
  }

  private static int[][] backwards(int[][] rings) {
    var out = new ArrayList<int[]>();
    for (int[] ring : rings) {
      var turned = new int[ring.length];
      for (int i = 0; i < ring.length; i++) {
        turned[i] = ring[ring.length - 1 - i];
      }
      out.add(turned);
    }
    return out.toArray(new int[0][]);
  }
}
