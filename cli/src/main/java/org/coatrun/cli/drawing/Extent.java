package org.coatrun.cli.drawing;

import java.util.Collection;
import java.util.List;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;

/** The upright rectangle that something takes up, in metres. */
record Extent(double west, double south, double east, double north) {

  /** The rectangle around the points; one metre square at the origin where there are none. */
  static Extent of(Collection<Vec2> points) {
    if (points.isEmpty()) {
      return new Extent(0, 0, 1, 1);
    }
    return new Extent(
        points.stream().mapToDouble(Vec2::x).min().orElseThrow(),
        points.stream().mapToDouble(Vec2::y).min().orElseThrow(),
        points.stream().mapToDouble(Vec2::x).max().orElseThrow(),
        points.stream().mapToDouble(Vec2::y).max().orElseThrow());
  }

  /**
   * Slabs, walls and assumed ground of all floors, so that floors lie on the same place of each
   * sheet.
   */
  static Extent of(LineRequest request) {
    return of(
        request.floors().stream()
            .flatMap(f -> List.of(f.plate(), f.walls(), f.columns(), f.ground()).stream())
            .flatMap(List::stream)
            .map(Region::outline)
            .flatMap(List::stream)
            .toList());
  }

  double width() {
    return east - west;
  }

  double height() {
    return north - south;
  }

  Vec2 middle() {
    return new Vec2((west + east) / 2, (south + north) / 2);
  }
}
