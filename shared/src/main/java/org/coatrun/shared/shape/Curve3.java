package org.coatrun.shared.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * A curve in space: pieces that follow each other, each beginning where the last one ends.
 *
 * @param segments at least one
 * @param closed whether the last piece ends where the first begins
 */
public record Curve3(List<Segment3> segments, boolean closed) {

  public Curve3 {
    segments = List.copyOf(segments);
    if (segments.isEmpty()) {
      throw new IllegalArgumentException("a curve without a piece");
    }
  }

  /** The polyline through the points; with {@code closed} it returns to the first. */
  public static Curve3 polyline(List<Vec3> points, boolean closed) {
    var pieces = new ArrayList<Segment3>();
    for (int i = 1; i < points.size(); i++) {
      pieces.add(new Segment3.Line(points.get(i - 1), points.get(i)));
    }
    if (closed && points.size() > 2 && !points.get(0).equals(points.get(points.size() - 1))) {
      pieces.add(new Segment3.Line(points.get(points.size() - 1), points.get(0)));
    }
    return new Curve3(pieces, closed);
  }

  /** The same curve, mapped. */
  public Curve3 map(Transform3 by) {
    return new Curve3(segments.stream().map(s -> s.map(by)).toList(), closed);
  }
}
