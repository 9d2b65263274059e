package org.coatrun.routing.floor;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.WorkPiece;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/**
 * A short bit of work.
 *
 * @param at its middle
 * @param underside its lowest level in metres
 * @param top its highest level in metres
 * @param volume of its coating in cubic metres
 */
record WorkBit(Vec2 at, double underside, double top, double volume) {

  /** Pieces are cut into bits of at most this length, in metres. */
  private static final double LONGEST = 1.5;

  /** Bits of a piece: cut evenly, and where it passes a slab. */
  static List<WorkBit> of(WorkPiece p, List<FloorOutline> floors) {
    var bits = new ArrayList<WorkBit>();
    if (p.coating().cubicMetres() <= 0) {
      return bits;
    }
    Vec3 along = p.to().minus(p.from());
    double length = along.length();
    List<Double> cuts = cuts(p, length, floors);
    boolean upright = Math.hypot(along.x(), along.y()) < 0.1 * length;
    double half = upright ? 0 : p.depth().metres() / 2;
    for (int i = 1; i < cuts.size(); i++) {
      Vec3 a = p.from().plus(along.times(cuts.get(i - 1)));
      Vec3 b = p.from().plus(along.times(cuts.get(i)));
      bits.add(
          new WorkBit(
              new Vec2((a.x() + b.x()) / 2, (a.y() + b.y()) / 2),
              Math.min(a.z(), b.z()) - half,
              Math.max(a.z(), b.z()) + half,
              p.coating().cubicMetres() * (cuts.get(i) - cuts.get(i - 1))));
    }
    return bits;
  }

  /** Where a piece is cut, as parts of its length. */
  private static List<Double> cuts(WorkPiece p, double length, List<FloorOutline> floors) {
    int n = Math.max(1, (int) Math.ceil(length / LONGEST));
    var cuts = new ArrayList<Double>();
    for (int i = 0; i <= n; i++) {
      cuts.add((double) i / n);
    }
    double rise = p.to().z() - p.from().z();
    for (FloorOutline floor : floors) {
      double t = (floor.elevation().metres() - p.from().z()) / rise;
      if (t > 0 && t < 1) {
        cuts.add(t);
      }
    }
    return cuts.stream().sorted().distinct().toList();
  }
}
