package org.coatrun.routing.network;

import static org.coatrun.routing.network.Corners.side;

/**
 * Whether a straight line between two free points stays on free floor. It may run along walls and
 * touch corners, but never enters a solid, not even through a corner point.
 */
final class Sight {

  private final Corners corners;
  private final Buckets buckets;

  Sight(Corners corners) {
    this.corners = corners;
    this.buckets = new Buckets(corners);
  }

  boolean clear(long ux, long uy, long vx, long vy) {
    boolean onePoint = ux == vx && uy == vy;
    return onePoint || !buckets.any(ux, uy, vx, vy, edge -> blocks(edge, ux, uy, vx, vy));
  }

  private boolean blocks(int a, long ux, long uy, long vx, long vy) {
    int b = corners.next[a];
    long ax = corners.x[a];
    long ay = corners.y[a];
    long bx = corners.x[b];
    long by = corners.y[b];
    int sideA = side(ux, uy, vx, vy, ax, ay);
    if (sideA == 0) {
      return within(ux, uy, vx, vy, ax, ay) && entersAt(a, ux, uy, vx, vy);
    }
    int sideB = side(ux, uy, vx, vy, bx, by);
    if (sideA * sideB >= 0) {
      return false;
    }
    int sideU = side(ax, ay, bx, by, ux, uy);
    int sideV = side(ax, ay, bx, by, vx, vy);
    return sideU * sideV < 0 || (sideU == 0 && sideV < 0) || (sideV == 0 && sideU < 0);
  }

  /** At a corner on the line: whether the way in or the way out leads through its solid wedge. */
  private boolean entersAt(int corner, long ux, long uy, long vx, long vy) {
    boolean isU = corners.x[corner] == ux && corners.y[corner] == uy;
    boolean isV = corners.x[corner] == vx && corners.y[corner] == vy;
    return (!isU && !corners.opensTo(corner, ux, uy)) || (!isV && !corners.opensTo(corner, vx, vy));
  }

  private static boolean within(long ux, long uy, long vx, long vy, long px, long py) {
    return Math.min(ux, vx) <= px
        && px <= Math.max(ux, vx)
        && Math.min(uy, vy) <= py
        && py <= Math.max(uy, vy);
  }
}
