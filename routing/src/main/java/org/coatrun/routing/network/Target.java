package org.coatrun.routing.network;

import org.coatrun.shared.shape.Vec2;

/** A free point that hose is led to, tied into the network of its floor once for all sources. */
public final class Target {

  private final Anchor anchor;

  /** Ties {@code point}, which must be free, into {@code network}. */
  public Target(FloorNetwork network, Vec2 point) {
    this.anchor = network.anchor(point);
  }

  /** The point, on whole tenths of a millimetre. */
  public Vec2 point() {
    return anchor.point();
  }

  Anchor anchor() {
    return anchor;
  }
}
