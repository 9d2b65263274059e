package org.coatrun.geometry.surface;

import java.util.Optional;
import org.coatrun.shared.shape.Curve2;
import org.coatrun.shared.shape.Curve3;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Segment3;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/** Some point of a shape, found without building it. */
final class Anchors {

  private Anchors() {}

  /** A point of the shape or near it, in the shape's axes; the origin where none is known. */
  static Vec3 of(Shape shape) {
    if (shape instanceof Shape.Placed s) {
      return s.by().apply(of(s.of()));
    }
    if (shape instanceof Shape.Combination s) {
      return of(s.first());
    }
    if (shape instanceof Shape.Compound s) {
      return s.items().isEmpty() ? Vec3.ZERO : of(s.items().get(0));
    }
    if (shape instanceof Shape.Mesh s) {
      return s.points().isEmpty() ? Vec3.ZERO : s.points().get(0);
    }
    if (shape instanceof Shape.Brep s) {
      return s.faces().stream()
          .flatMap(f -> f.bounds().stream())
          .findFirst()
          .map(Anchors::start)
          .orElse(Vec3.ZERO);
    }
    return ofSweep(shape);
  }

  private static Vec3 ofSweep(Shape shape) {
    if (shape instanceof Shape.Extrusion s) {
      return start(s.profile(), s.position());
    }
    if (shape instanceof Shape.TaperedExtrusion s) {
      return start(s.start(), s.position());
    }
    if (shape instanceof Shape.Revolution s) {
      return start(s.profile(), s.position());
    }
    if (shape instanceof Shape.TaperedRevolution s) {
      return start(s.start(), s.position());
    }
    if (shape instanceof Shape.SweptDisk s) {
      return start(s.directrix());
    }
    if (shape instanceof Shape.Sweep s) {
      return s.position().apply(start(s.directrix()));
    }
    if (shape instanceof Shape.Sectioned s) {
      return s.stations().isEmpty() ? Vec3.ZERO : s.stations().get(0).position().origin();
    }
    return ofPrimitive(shape).map(Transform3::origin).orElse(Vec3.ZERO);
  }

  private static Optional<Transform3> ofPrimitive(Shape shape) {
    if (shape instanceof Shape.Block s) {
      return Optional.of(s.position());
    }
    if (shape instanceof Shape.Pyramid s) {
      return Optional.of(s.position());
    }
    if (shape instanceof Shape.Cone s) {
      return Optional.of(s.position());
    }
    if (shape instanceof Shape.Cylinder s) {
      return Optional.of(s.position());
    }
    return shape instanceof Shape.Sphere s ? Optional.of(s.position()) : Optional.empty();
  }

  /** Where an outline is drawn far from its own origin, so is the body. */
  private static Vec3 start(Profile profile, Transform3 position) {
    Vec2 p = profile instanceof Profile.Outline o ? start(o.outer()) : Vec2.ZERO;
    return position.apply(new Vec3(p.x(), p.y(), 0));
  }

  private static Vec2 start(Curve2 curve) {
    Segment2 first = curve.segments().get(0);
    if (first instanceof Segment2.Line line) {
      return line.from();
    }
    return first instanceof Segment2.Arc arc
        ? arc.centre()
        : ((Segment2.Spline) first).poles().get(0);
  }

  private static Vec3 start(Curve3 curve) {
    Segment3 first = curve.segments().get(0);
    if (first instanceof Segment3.Line line) {
      return line.from();
    }
    return first instanceof Segment3.Arc arc
        ? arc.centre()
        : ((Segment3.Spline) first).poles().get(0);
  }
}
