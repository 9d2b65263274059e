package org.coatrun.geometry.build;

import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/** Straight from one place of the plane to another. */
record RuledSheet(Transform3 from, Transform3 to) implements Sheet {

  @Override
  public Vec3 direction(Vec2 d, double s) {
    return image(from, d).times(1 - s).plus(image(to, d).times(s));
  }

  @Override
  public Vec3 speed(Vec2 p, double s) {
    return to.origin().plus(image(to, p)).minus(from.origin()).minus(image(from, p));
  }

  @Override
  public boolean straight() {
    return true;
  }

  private static Vec3 image(Transform3 map, Vec2 d) {
    return map.x().times(d.x()).plus(map.y().times(d.y()));
  }
}
