package org.coatrun.ifcimport.shape;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.shared.shape.Transform2;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/**
 * Points, directions, axis placements and transformation operators of one file; lengths become
 * metres. Safe for several threads.
 */
final class Axes {

  private static final double ALONG = 1e-9;
  private static final int KEPT = 64;

  private final double length;

  /** The directions that axes were given by last: most things are turned by the same few. */
  private final AtomicReferenceArray<Known> recent = new AtomicReferenceArray<>(KEPT);

  private record Known(long id, Vec3 unit) {}

  /** With the metres in one unit of length. */
  Axes(double length) {
    this.length = length;
  }

  double length() {
    return length;
  }

  /** A point in space; one in a plane has z = 0. */
  Vec3 point(Entity point) {
    if (!point.isA("IfcCartesianPoint")) {
      throw point.broken("this kind of point is not handled");
    }
    return scaled(point.numbers("Coordinates"), point);
  }

  Vec3 scaled(List<Double> c, Entity of) {
    if (c.size() < 2 || c.size() > 3) {
      throw of.broken("a point needs two or three coordinates");
    }
    return new Vec3(c.get(0) * length, c.get(1) * length, c.size() > 2 ? c.get(2) * length : 0);
  }

  /** A direction of length one. */
  static Vec3 direction(Entity direction) {
    List<Double> c = direction.numbers("DirectionRatios");
    if (c.size() < 2) {
      throw direction.broken("a direction needs two or three ratios");
    }
    Vec3 unit = new Vec3(c.get(0), c.get(1), c.size() > 2 ? c.get(2) : 0).unit();
    if (!(unit.length() > 0.5)) {
      throw direction.broken("a direction of no length");
    }
    return unit;
  }

  private Optional<Vec3> given(Entity of, String attribute) {
    OptionalLong id = of.refId(attribute);
    if (id.isEmpty()) {
      return Optional.empty();
    }
    int slot = (int) (id.getAsLong() & (KEPT - 1));
    Known last = recent.get(slot);
    if (last == null || last.id != id.getAsLong()) {
      last = new Known(id.getAsLong(), direction(of.need(attribute)));
      recent.set(slot, last);
    }
    return Optional.of(last.unit);
  }

  /** A frame from an axis placement in space or in a plane. */
  Transform3 frame(Entity placement) {
    if (!placement.isA("IfcPlacement") || placement.isA("IfcAxis2PlacementLinear")) {
      throw placement.broken("this kind of placement is not handled");
    }
    Vec3 origin = point(placement.need("Location"));
    Vec3 z = given(placement, "Axis").orElse(Vec3.Z);
    return Transform3.frame(origin, z, given(placement, "RefDirection").orElse(standIn(z)));
  }

  /** The standard's choice where no reference direction is given: x, or y where z is along x. */
  private static Vec3 standIn(Vec3 z) {
    return Math.abs(Math.abs(z.x()) - 1) < ALONG ? Vec3.Y : Vec3.X;
  }

  /** The frame that an attribute gives, or none at all. */
  Transform3 frame(Entity of, String attribute) {
    return of.ref(attribute).map(this::frame).orElse(Transform3.IDENTITY);
  }

  /** A frame in a plane. */
  Transform2 frame2(Entity placement) {
    Vec3 origin = point(placement.need("Location"));
    Vec3 x = given(placement, "RefDirection").orElse(Vec3.X);
    return Transform2.frame(flat(origin), flat(x));
  }

  static Vec2 flat(Vec3 v) {
    return new Vec2(v.x(), v.y());
  }

  /** An operator in a plane, with scale and reflection. */
  Transform2 operator2(Entity operator) {
    double scale = operator.number("Scale").orElse(1);
    double scale2 = operator.number("Scale2").orElse(scale);
    Optional<Vec2> axis1 = given(operator, "Axis1").map(Axes::flat);
    Optional<Vec2> axis2 = given(operator, "Axis2").map(Axes::flat);
    Vec2 x;
    Vec2 y;
    if (axis1.isPresent()) {
      x = axis1.get().unit();
      y = axis2.isPresent() && axis2.get().dot(x.left()) < 0 ? x.left().times(-1) : x.left();
    } else {
      y = axis2.map(Vec2::unit).orElse(new Vec2(0, 1));
      x = y.left().times(-1);
    }
    return new Transform2(
        x.times(scale), y.times(scale2), flat(point(operator.need("LocalOrigin"))));
  }

  /** An operator in space, with even or uneven scale and reflection. */
  Transform3 operator3(Entity operator) {
    double scale = operator.number("Scale").orElse(1);
    Optional<Vec3> axis1 = given(operator, "Axis1");
    Optional<Vec3> axis2 = given(operator, "Axis2");
    Vec3 z = given(operator, "Axis3").orElseGet(() -> thirdAxis(axis1, axis2));
    Vec3 x = Transform3.frame(Vec3.ZERO, z, axis1.orElse(standIn(z))).x();
    Vec3 hint = axis2.orElse(Vec3.Y);
    Vec3 y = hint.minus(z.times(hint.dot(z))).minus(x.times(hint.dot(x)));
    y = y.length() < ALONG ? z.cross(x) : y.unit();
    return new Transform3(
        x.times(scale),
        y.times(operator.number("Scale2").orElse(scale)),
        z.times(operator.number("Scale3").orElse(scale)),
        point(operator.need("LocalOrigin")));
  }

  /** Two axes that do not lie in the xy plane, without a third: square to both. */
  private static Vec3 thirdAxis(Optional<Vec3> axis1, Optional<Vec3> axis2) {
    if (axis1.isEmpty() || axis2.isEmpty()) {
      return Vec3.Z;
    }
    Vec3 across = axis1.get().cross(axis2.get()).unit();
    return across.length() < 0.5 || Math.abs(across.z()) > 1 - ALONG ? Vec3.Z : across;
  }

  /** Whether the map moves nothing at all; zeros count whatever their sign. */
  static boolean isIdentity(Transform2 t) {
    return t.x().distance(Transform2.IDENTITY.x()) == 0
        && t.y().distance(Transform2.IDENTITY.y()) == 0
        && t.origin().length() == 0;
  }

  /** Whether the map moves nothing at all; zeros count whatever their sign. */
  static boolean isIdentity(Transform3 t) {
    return t.x().distance(Vec3.X) == 0
        && t.y().distance(Vec3.Y) == 0
        && t.z().distance(Vec3.Z) == 0
        && t.origin().length() == 0;
  }
}
