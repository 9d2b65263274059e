package org.coatrun.routing.floor;

import java.util.List;
import org.coatrun.shared.shape.Vec2;

/** What is asked of bare rings of points. */
final class Rings {

  private Rings() {}

  /** The area, positive where the ring runs anticlockwise. */
  static double signedArea(List<Vec2> ring) {
    double twice = 0;
    Vec2 a = ring.get(ring.size() - 1);
    for (Vec2 b : ring) {
      twice += a.cross(b);
      a = b;
    }
    return twice / 2;
  }
}
