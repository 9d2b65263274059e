package org.coatrun.geometry.frame;

import org.coatrun.shared.shape.Vec3;

/** Names the ends of a piece as people on site do: foot and head, north end, lower end. */
final class EndWords {

  private EndWords() {}

  /** The name of the far (+1) or near (-1) end; north is +y. */
  static String of(FramePiece piece, int end) {
    Vec3 d = piece.box().along().times(end);
    if (piece.isColumn()) {
      return d.z() > 0 ? "its head" : "its foot";
    }
    if (Math.abs(d.z()) > 0.3) {
      return d.z() > 0 ? "its upper end" : "its lower end";
    }
    if (Math.abs(d.y()) >= Math.abs(d.x())) {
      return d.y() > 0 ? "its north end" : "its south end";
    }
    return d.x() > 0 ? "its east end" : "its west end";
  }
}
