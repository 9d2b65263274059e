package org.coatrun.cli.line;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.coatrun.shared.job.Side;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.shape.Vec2;

/** Where trucks can unload: points just outside a floor, along the sides that the job names. */
final class TruckAccess {

  private static final double OUTSIDE = 2;
  private static final double SPACING = 12;

  private TruckAccess() {}

  static List<Vec2> along(FloorOutline floor, List<Side> sides) {
    List<Vec2> points =
        floor.plate().stream().map(r -> r.outline()).flatMap(Collection::stream).toList();
    var access = new ArrayList<Vec2>();
    if (points.isEmpty()) {
      return access;
    }
    double x0 = points.stream().mapToDouble(Vec2::x).min().orElseThrow() - OUTSIDE;
    double x1 = points.stream().mapToDouble(Vec2::x).max().orElseThrow() + OUTSIDE;
    double y0 = points.stream().mapToDouble(Vec2::y).min().orElseThrow() - OUTSIDE;
    double y1 = points.stream().mapToDouble(Vec2::y).max().orElseThrow() + OUTSIDE;
    for (Side side : Side.values()) {
      if (sides.contains(side)) {
        switch (side) {
          case NORTH -> spread(new Vec2(x0, y1), new Vec2(x1, y1), access);
          case EAST -> spread(new Vec2(x1, y0), new Vec2(x1, y1), access);
          case SOUTH -> spread(new Vec2(x0, y0), new Vec2(x1, y0), access);
          case WEST -> spread(new Vec2(x0, y0), new Vec2(x0, y1), access);
        }
      }
    }
    return access;
  }

  private static void spread(Vec2 a, Vec2 b, List<Vec2> access) {
    int n = Math.max(1, (int) Math.round(a.distance(b) / SPACING));
    for (int i = 0; i < n; i++) {
      access.add(a.plus(b.minus(a).times((i + 0.5) / n)));
    }
  }
}
