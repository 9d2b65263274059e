package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.coatrun.geometry.profile.SectionOutline;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Surface;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** Solids of discs and profiles carried along curves. */
final class PathSweeps {

  private PathSweeps() {}

  static BuildResult.Built build(Shape.SweptDisk s, Transform3 at) {
    double inner = s.innerRadius().orElse(0);
    Profile profile =
        inner > 0
            ? new Profile.CircleHollow("", s.radius(), s.radius() - inner)
            : new Profile.Circle("", s.radius());
    List<Legs.Leg> legs = Legs.of(s.directrix(), s.filletRadius());
    Legs.Leg first = legs.get(0);
    Vec3 z = first.directionAtStart();
    Transform3 frame = Transform3.frame(first.from(), z, z.anyPerpendicular());
    double length = legs.stream().mapToDouble(Legs.Leg::length).sum();
    double radius = s.radius();
    double area = Math.PI * (radius * radius - inner * inner);
    return build(profile, legs, frame, at, area * length * Math.abs(at.determinant()));
  }

  static BuildResult.Built build(Shape.Sweep s, Transform3 at) {
    List<Legs.Leg> legs = Legs.of(s.directrix(), OptionalDouble.empty());
    Legs.Leg first = legs.get(0);
    Vec3 x = sideways(s.guide(), first.from());
    Transform3 frame = Transform3.frame(first.from(), first.directionAtStart(), x);
    return build(s.profile(), legs, frame, at.after(s.position()), Double.NaN);
  }

  private static BuildResult.Built build(
      Profile profile, List<Legs.Leg> legs, Transform3 frame, Transform3 at, double volume) {
    var notes = new ArrayList<BuildResult.Note>();
    SectionOutline outline = Drawings.draw(profile, notes);
    Sweeps.Way way = PathWay.of(legs, frame, at);
    var built = Sweeps.build(profile, outline, outline, way, volume, notes);
    Transform3 first = at.after(frame);
    SectionOutline seen = Drawings.seenAlong(outline, first, first.z());
    double scale = Math.cbrt(Math.abs(at.determinant()));
    Vec3 from = at.apply(legs.get(0).from());
    Vec3 to = at.apply(legs.get(legs.size() - 1).to());
    return Sweeps.withRun(built, seen, seen, way.length() * scale, from, to);
  }

  /** Rough direction of the profile's x axis at a point of the directrix. */
  private static Vec3 sideways(Shape.Guide guide, Vec3 at) {
    if (guide instanceof Shape.Guide.FixedReference f) {
      return f.direction();
    }
    return normal(((Shape.Guide.OnSurface) guide).surface(), at);
  }

  private static Vec3 normal(Surface surface, Vec3 at) {
    if (surface instanceof Surface.Plane p) {
      return p.frame().z();
    }
    if (surface instanceof Surface.Cylinder c) {
      Vec3 out = at.minus(c.frame().origin());
      return out.minus(c.frame().z().times(out.dot(c.frame().z())));
    }
    if (surface instanceof Surface.Sphere s) {
      return at.minus(s.frame().origin());
    }
    if (surface instanceof Surface.Swept w) {
      return w.along().cross(chord(w));
    }
    throw NotBuildableException.notHandled(
        "sweep on a " + surface.getClass().getSimpleName() + " surface");
  }

  /** Direction of the swept curve's chord; exact where the curve is straight. */
  private static Vec3 chord(Surface.Swept w) {
    List<Legs.Leg> legs = Legs.of(w.curve(), OptionalDouble.empty());
    return legs.get(0).directionAtStart();
  }
}
