package org.coatrun.routing.network;

import org.coatrun.shared.shape.Vec2;

/**
 * A free point tied into a network: the corners from which a taut hose can reach it directly.
 *
 * @param x tenths of a millimetre
 * @param y tenths of a millimetre
 * @param corners those it sees as tangent points
 */
record Anchor(long x, long y, int[] corners) {

  Vec2 point() {
    return new Vec2(x / Corners.SCALE, y / Corners.SCALE);
  }
}
