package org.coatrun.shared.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * A curve in a plane: pieces that follow each other, each beginning where the last one ends.
 *
 * @param segments at least one
 * @param closed whether the last piece ends where the first begins
 */
public record Curve2(List<Segment2> segments, boolean closed) {

  public Curve2 {
    segments = List.copyOf(segments);
    if (segments.isEmpty()) {
      throw new IllegalArgumentException("a curve without a piece");
    }
  }

  /** The polyline through the points; with {@code closed} it returns to the first. */
  public static Curve2 polyline(List<Vec2> points, boolean closed) {
    var pieces = new ArrayList<Segment2>();
    for (int i = 1; i < points.size(); i++) {
      pieces.add(new Segment2.Line(points.get(i - 1), points.get(i)));
    }
    if (closed && points.size() > 2 && !points.get(0).equals(points.get(points.size() - 1))) {
      pieces.add(new Segment2.Line(points.get(points.size() - 1), points.get(0)));
    }
    return new Curve2(pieces, closed);
  }

  /** The same curve, mapped. */
  public Curve2 map(Transform2 by) {
    return new Curve2(segments.stream().map(s -> s.map(by)).toList(), closed);
  }
}
