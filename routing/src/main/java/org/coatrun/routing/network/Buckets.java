package org.coatrun.routing.network;

import java.util.function.IntPredicate;

/** The edges of a free area in square buckets, so that a line meets only those beside it. */
final class Buckets {

  private final long minX;
  private final long minY;
  private final long side;
  private final int columns;
  private final int rows;
  private final int[] start;
  private final int[] edges;

  Buckets(Corners corners) {
    long x0 = Long.MAX_VALUE;
    long y0 = Long.MAX_VALUE;
    long x1 = Long.MIN_VALUE;
    long y1 = Long.MIN_VALUE;
    for (int i = 0; i < corners.size(); i++) {
      x0 = Math.min(x0, corners.x[i]);
      y0 = Math.min(y0, corners.y[i]);
      x1 = Math.max(x1, corners.x[i]);
      y1 = Math.max(y1, corners.y[i]);
    }
    boolean none = corners.size() == 0;
    minX = none ? 0 : x0;
    minY = none ? 0 : y0;
    double width = none ? 1 : x1 - x0 + 1.0;
    double depth = none ? 1 : y1 - y0 + 1.0;
    side = Math.max(1, (long) Math.ceil(Math.sqrt(width * depth / Math.max(1, corners.size()))));
    columns = (int) (width / side) + 1;
    rows = (int) (depth / side) + 1;
    start = new int[columns * rows + 1];
    forEdges(corners, bucket -> ++start[bucket + 1] > 0);
    for (int b = 0; b < columns * rows; b++) {
      start[b + 1] += start[b];
    }
    edges = new int[start[columns * rows]];
    fill(corners);
  }

  /**
   * Whether some edge in a bucket touched by the line answers the test; an edge in several buckets
   * may be asked more than once.
   */
  boolean any(long ax, long ay, long bx, long by, IntPredicate test) {
    return touched(
        ax,
        ay,
        bx,
        by,
        bucket -> {
          for (int k = start[bucket]; k < start[bucket + 1]; k++) {
            if (test.test(edges[k])) {
              return true;
            }
          }
          return false;
        });
  }

  private void fill(Corners corners) {
    int[] at = start.clone();
    for (int i = 0; i < corners.size(); i++) {
      int edge = i;
      int j = corners.next[i];
      touched(
          corners.x[i],
          corners.y[i],
          corners.x[j],
          corners.y[j],
          bucket -> {
            edges[at[bucket]++] = edge;
            return false;
          });
    }
  }

  private void forEdges(Corners corners, IntPredicate counted) {
    for (int i = 0; i < corners.size(); i++) {
      int j = corners.next[i];
      touched(
          corners.x[i], corners.y[i], corners.x[j], corners.y[j], bucket -> !counted.test(bucket));
    }
  }

  /**
   * Walks the buckets that the line touches, one grain to each side included, until one says so.
   */
  private boolean touched(long ax, long ay, long bx, long by, IntPredicate stop) {
    if (ax > bx) {
      return touched(bx, by, ax, ay, stop);
    }
    int last = column(bx + 1);
    for (int c = column(ax - 1); c <= last; c++) {
      long left = Math.max(ax, minX + c * side - 1);
      long right = Math.min(bx, minX + (c + 1) * side + 1);
      double y0 = at(ax, ay, bx, by, left);
      double y1 = at(ax, ay, bx, by, right);
      boolean upright = ax == bx;
      int low = row((long) Math.floor(upright ? Math.min(ay, by) : Math.min(y0, y1)) - 1);
      int high = row((long) Math.ceil(upright ? Math.max(ay, by) : Math.max(y0, y1)) + 1);
      for (int r = low; r <= high; r++) {
        if (stop.test(c * rows + r)) {
          return true;
        }
      }
    }
    return false;
  }

  private static double at(long ax, long ay, long bx, long by, long x) {
    return ax == bx ? ay : ay + (double) (by - ay) * (x - ax) / (bx - ax);
  }

  private int column(long x) {
    return (int) Math.max(0, Math.min(columns - 1, Math.floorDiv(x - minX, side)));
  }

  private int row(long y) {
    return (int) Math.max(0, Math.min(rows - 1, Math.floorDiv(y - minY, side)));
  }
}
