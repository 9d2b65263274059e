package org.coatrun.cli.field;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.coatrun.shared.shape.Curve2;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/**
 * Shapes as web-ifc 0.0.78 draws them, found out from its figures: a fillet of an I is a straight
 * chamfer, a tee has none, an angle has its fillet at the toes too, a round tube has eleven sides,
 * and what turns about an axis goes there in three straight steps.
 */
final class PeerDrawing {

  private static final int SIDES = 11;
  private static final int STEPS = 3;

  private PeerDrawing() {}

  static Shape of(Shape shape) {
    if (shape instanceof Shape.Placed p) {
      return new Shape.Placed(p.by(), of(p.of()));
    }
    if (shape instanceof Shape.Combination c) {
      return new Shape.Combination(c.operator(), of(c.first()), of(c.second()));
    }
    if (shape instanceof Shape.Compound c) {
      return new Shape.Compound(c.items().stream().map(PeerDrawing::of).toList());
    }
    if (shape instanceof Shape.Extrusion e) {
      return new Shape.Extrusion(of(e.profile()), e.position(), e.direction(), e.depth());
    }
    return shape instanceof Shape.Revolution r ? stepped(r) : shape;
  }

  private static Shape stepped(Shape.Revolution r) {
    Profile profile = of(r.profile());
    var stations = new ArrayList<Shape.Station>();
    for (int i = 0; i <= STEPS; i++) {
      Transform3 turn = turn(r.axisPoint(), r.axisDirection(), r.angle() * i / STEPS);
      stations.add(new Shape.Station(profile, r.position().after(turn)));
    }
    return new Shape.Sectioned(stations);
  }

  /** Rotation about an axis, by the formula of Rodrigues. */
  private static Transform3 turn(Vec3 point, Vec3 axis, double angle) {
    Vec3 x = turned(Vec3.X, axis, angle);
    Vec3 y = turned(Vec3.Y, axis, angle);
    Vec3 z = turned(Vec3.Z, axis, angle);
    return new Transform3(x, y, z, point.minus(turned(point, axis, angle)));
  }

  private static Vec3 turned(Vec3 v, Vec3 axis, double angle) {
    return v.times(Math.cos(angle))
        .plus(axis.cross(v).times(Math.sin(angle)))
        .plus(axis.times(axis.dot(v) * (1 - Math.cos(angle))));
  }

  private static Profile of(Profile profile) {
    OptionalDouble sharp = OptionalDouble.of(0);
    if (profile instanceof Profile.Placed p) {
      return new Profile.Placed(p.name(), p.by(), of(p.of()));
    }
    if (profile instanceof Profile.IShape i) {
      return chamfered(i);
    }
    if (profile instanceof Profile.LShape l) {
      return new Profile.LShape(
          l.name(), l.depth(), l.width(), l.thickness(), l.fillet(), l.fillet(), sharp);
    }
    if (profile instanceof Profile.TShape t) {
      return new Profile.TShape(
          t.name(), t.depth(), t.width(), t.web(), t.flange(), sharp, sharp, sharp, sharp, sharp);
    }
    if (profile instanceof Profile.CircleHollow c) {
      Curve2 inner = polygon(c.radius() - c.wall());
      return new Profile.Outline(c.name(), polygon(c.radius()), List.of(inner));
    }
    return profile;
  }

  private static Curve2 polygon(double radius) {
    var corners = new ArrayList<Vec2>();
    for (int i = 0; i < SIDES; i++) {
      double angle = 2 * Math.PI * i / SIDES;
      corners.add(new Vec2(Math.cos(angle), Math.sin(angle)).times(radius));
    }
    return Curve2.polyline(corners, true);
  }

  private static Profile chamfered(Profile.IShape i) {
    double r = i.fillet().orElse(0);
    double foot = i.depth() / 2 - i.flange();
    var quarter =
        List.of(
            new Vec2(i.width() / 2, i.depth() / 2),
            new Vec2(i.width() / 2, foot),
            new Vec2(i.web() / 2 + r, foot),
            new Vec2(i.web() / 2, foot - r));
    var corners = new ArrayList<Vec2>();
    for (int side : new int[] {1, -1}) {
      for (int n = 0; n < 8; n++) {
        Vec2 v = quarter.get(n < 4 ? n : 7 - n);
        corners.add(new Vec2(side * v.x(), side * (n < 4 ? v.y() : -v.y())));
      }
    }
    return new Profile.Outline(i.name(), Curve2.polyline(corners, true), List.of());
  }
}
