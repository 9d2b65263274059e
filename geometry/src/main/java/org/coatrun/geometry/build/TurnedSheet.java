package org.coatrun.geometry.build;

import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/** Round an axis by an angle. */
record TurnedSheet(Turn turn, double from, double angle) implements Sheet {

  @Override
  public Vec3 direction(Vec2 d, double s) {
    return turn.direction(d, from + s * angle);
  }

  @Override
  public Vec3 speed(Vec2 p, double s) {
    return turn.speed(p, from + s * angle).times(angle);
  }

  @Override
  public boolean straight() {
    return false;
  }
}
