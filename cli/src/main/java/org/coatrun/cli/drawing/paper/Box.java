package org.coatrun.cli.drawing.paper;

import java.util.List;
import org.coatrun.shared.shape.Vec2;

/** An upright rectangle on paper, in millimetres; y goes down. */
public record Box(double left, double top, double right, double bottom) {

  /** The box of this size around a point. */
  public static Box around(Vec2 centre, double width, double height) {
    return new Box(
        centre.x() - width / 2,
        centre.y() - height / 2,
        centre.x() + width / 2,
        centre.y() + height / 2);
  }

  public double width() {
    return right - left;
  }

  public double height() {
    return bottom - top;
  }

  public Vec2 centre() {
    return new Vec2((left + right) / 2, (top + bottom) / 2);
  }

  /** Larger by so much on each side. */
  public Box grown(double by) {
    return new Box(left - by, top - by, right + by, bottom + by);
  }

  /** Whether both have some area in common. */
  public boolean meets(Box o) {
    return left < o.right && o.left < right && top < o.bottom && o.top < bottom;
  }

  public boolean contains(Vec2 p) {
    return left <= p.x() && p.x() <= right && top <= p.y() && p.y() <= bottom;
  }

  public boolean contains(Box o) {
    return left <= o.left && o.right <= right && top <= o.top && o.bottom <= bottom;
  }

  /** The nearest point inside. */
  public Vec2 clamp(Vec2 p) {
    return new Vec2(Math.max(left, Math.min(right, p.x())), Math.max(top, Math.min(bottom, p.y())));
  }

  /** Whether the straight line between two points has a point inside. */
  public boolean crossedBy(Vec2 a, Vec2 b) {
    double from = 0;
    double to = 1;
    double[] p = {a.x() - b.x(), b.x() - a.x(), a.y() - b.y(), b.y() - a.y()};
    double[] q = {a.x() - left, right - a.x(), a.y() - top, bottom - a.y()};
    for (int i = 0; i < 4; i++) {
      if (p[i] == 0 && q[i] < 0) {
        return false;
      }
      if (p[i] < 0) {
        from = Math.max(from, q[i] / p[i]);
      } else if (p[i] > 0) {
        to = Math.min(to, q[i] / p[i]);
      }
    }
    return from <= to;
  }

  /** Its corners, round. */
  public List<Vec2> ring() {
    return List.of(
        new Vec2(left, top), new Vec2(right, top), new Vec2(right, bottom), new Vec2(left, bottom));
  }
}
