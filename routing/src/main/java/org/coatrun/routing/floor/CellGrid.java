package org.coatrun.routing.floor;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;

/**
 * The squares into which a floor's work is gathered: the extent of its plate, divided evenly both
 * ways, so that floors of one outline have the same squares and none is a sliver at an edge.
 */
final class CellGrid {

  /** Steel on the line between two squares belongs to one of them on every floor, in metres. */
  private static final double NOISE = 1e-6;

  private final Division rows;
  private final Division columns;

  /**
   * @param plate of the floor; work may stand a little outside of it
   * @param side that no square exceeds, in metres
   */
  CellGrid(List<Region> plate, double side) {
    rows = Division.of(plate, Vec2::y, side);
    columns = Division.of(plate, Vec2::x, side);
  }

  int row(Vec2 at) {
    return rows.at(at.y());
  }

  int column(Vec2 at) {
    return columns.at(at.x());
  }

  /** An extent in so many even parts. */
  private record Division(double from, double part, int parts) {

    static Division of(List<Region> plate, ToDoubleFunction<Vec2> along, double side) {
      double[] all =
          plate.stream().flatMap(r -> r.outline().stream()).mapToDouble(along).sorted().toArray();
      if (all.length == 0) {
        return new Division(0, side, 1);
      }
      double extent = all[all.length - 1] - all[0];
      int parts = Math.max(1, (int) Math.ceil((extent - NOISE) / side));
      return new Division(all[0], Math.max(extent / parts, NOISE), parts);
    }

    int at(double x) {
      int part = (int) Math.floor((x - from + NOISE) / this.part);
      return Math.max(0, Math.min(part, parts - 1));
    }
  }
}
