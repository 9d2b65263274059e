package org.coatrun.routing.network;

import java.util.List;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;

/** A turned pair of axes: u along the longest edge of a floor, v to the left of it. */
record Frame(Vec2 u) {

  /** The frame of the longest outer edge; the plain axes where there is none. */
  static Frame of(List<Region> free) {
    Vec2 longest = new Vec2(0, 0);
    for (Region r : free) {
      List<Vec2> ring = r.outline();
      for (int i = 0; i < ring.size(); i++) {
        Vec2 edge = ring.get((i + 1) % ring.size()).minus(ring.get(i));
        if (edge.length() > longest.length() + 1e-9) {
          longest = edge;
        }
      }
    }
    return new Frame(longest.length() == 0 ? new Vec2(1, 0) : firstQuadrant(longest.unit()));
  }

  Vec2 toLocal(Vec2 p) {
    return new Vec2(p.dot(u), p.dot(u.left()));
  }

  Vec2 toFloor(Vec2 q) {
    return u.times(q.x()).plus(u.left().times(q.y()));
  }

  private static Vec2 firstQuadrant(Vec2 d) {
    Vec2 turned = d;
    while (turned.x() <= 1e-9 || turned.y() < -1e-9) {
      turned = turned.left();
    }
    return turned;
  }
}
