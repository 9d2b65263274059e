package org.coatrun.routing.network;

import java.util.List;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;

/**
 * The corners of a free area as whole tenths of a millimetre, the free side to the left of every
 * edge. Corner i is joined to {@code next[i]}.
 */
final class Corners {

  /** Tenths of a millimetre in a metre. */
  static final double SCALE = 10_000;

  final long[] x;
  final long[] y;
  final int[] previous;
  final int[] next;

  Corners(List<Region> free) {
    int count = free.stream().mapToInt(Corners::count).sum();
    x = new long[count];
    y = new long[count];
    previous = new int[count];
    next = new int[count];
    int at = 0;
    for (Region r : free) {
      at = put(r.outline(), at, true);
      for (List<Vec2> hole : r.holes()) {
        at = put(hole, at, false);
      }
    }
  }

  int size() {
    return x.length;
  }

  static long grain(double metres) {
    return Math.round(metres * SCALE);
  }

  Vec2 point(int i) {
    return new Vec2(x[i] / SCALE, y[i] / SCALE);
  }

  /** Whether a taut hose can bend here: the free side spans more than half a turn. */
  boolean reflex(int i) {
    int p = previous[i];
    int n = next[i];
    return side(x[p], y[p], x[i], y[i], x[n], y[n]) < 0;
  }

  /** Whether a straight line from (qx, qy) only touches the solid at corner i. */
  boolean tangent(long qx, long qy, int i) {
    int p = previous[i];
    int n = next[i];
    return side(qx, qy, x[i], y[i], x[p], y[p]) * side(qx, qy, x[i], y[i], x[n], y[n]) >= 0;
  }

  /** Whether going from corner i towards (qx, qy) stays out of the solid wedge of the corner. */
  boolean opensTo(int i, long qx, long qy) {
    int p = previous[i];
    int n = next[i];
    boolean leftOfIn = side(x[p], y[p], x[i], y[i], qx, qy) >= 0;
    boolean leftOfOut = side(x[i], y[i], x[n], y[n], qx, qy) >= 0;
    return reflex(i) ? leftOfIn || leftOfOut : leftOfIn && leftOfOut;
  }

  /**
   * 1 where c lies left of the line from a to b, −1 where right, 0 where on it. Exact while
   * coordinates stay within 100 km.
   */
  static int side(long ax, long ay, long bx, long by, long cx, long cy) {
    return Long.signum((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));
  }

  private int put(List<Vec2> ring, int from, boolean anticlockwise) {
    int n = ring.size();
    boolean turn = signedArea(ring) > 0 != anticlockwise;
    for (int i = 0; i < n; i++) {
      Vec2 p = ring.get(turn ? n - 1 - i : i);
      x[from + i] = grain(p.x());
      y[from + i] = grain(p.y());
      previous[from + i] = from + (i + n - 1) % n;
      next[from + i] = from + (i + 1) % n;
    }
    return from + n;
  }

  private static double signedArea(List<Vec2> ring) {
    double twice = 0;
    Vec2 a = ring.get(ring.size() - 1);
    for (Vec2 b : ring) {
      twice += a.cross(b);
      a = b;
    }
    return twice;
  }

  private static int count(Region r) {
    return r.outline().size() + r.holes().stream().mapToInt(List::size).sum();
  }
}
