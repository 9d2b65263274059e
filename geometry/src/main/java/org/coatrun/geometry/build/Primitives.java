package org.coatrun.geometry.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.geometry.solid.FaceLabel;
import org.coatrun.geometry.solid.SolidBuilder;
import org.coatrun.shared.shape.Curve2;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/** Blocks, pyramids, and rounds as the sweeps that they are. */
final class Primitives {

  private Primitives() {}

  static BuildResult.Built block(Shape.Block s, Transform3 at) {
    var centre = Transform3.translation(new Vec3(s.x() / 2, s.y() / 2, 0));
    Profile base = new Profile.Rectangle("", s.x(), s.y(), 0);
    return plain(
        Extrusions.build(new Shape.Extrusion(base, s.position().after(centre), Vec3.Z, s.z()), at));
  }

  static BuildResult.Built cylinder(Shape.Cylinder s, Transform3 at) {
    Profile base = new Profile.Circle("", s.radius());
    return plain(Extrusions.build(new Shape.Extrusion(base, s.position(), Vec3.Z, s.height()), at));
  }

  /** A right triangle turned about its upright side. */
  static BuildResult.Built cone(Shape.Cone s, Transform3 at) {
    List<Vec2> corners = List.of(Vec2.ZERO, new Vec2(s.radius(), 0), new Vec2(0, s.height()));
    return turned(Curve2.polyline(corners, true), s.position(), at);
  }

  /** A half disc turned about its straight side. */
  static BuildResult.Built sphere(Shape.Sphere s, Transform3 at) {
    double r = s.radius();
    Segment2 half =
        new Segment2.Arc(Vec2.ZERO, new Vec2(r, 0), new Vec2(0, r), -Math.PI / 2, Math.PI);
    Segment2 back = new Segment2.Line(new Vec2(0, r), new Vec2(0, -r));
    return turned(new Curve2(List.of(half, back), true), s.position(), at);
  }

  static BuildResult.Built pyramid(Shape.Pyramid s, Transform3 at) {
    Transform3 place = at.after(s.position());
    var builder = new SolidBuilder();
    Vec3[] corners = {
      Vec3.ZERO,
      new Vec3(s.x(), 0, 0),
      new Vec3(s.x(), s.y(), 0),
      new Vec3(0, s.y(), 0),
      new Vec3(s.x() / 2, s.y() / 2, s.height())
    };
    for (Vec3 corner : corners) {
      Vec3 p = place.apply(corner);
      builder.vertex(p.x(), p.y(), p.z());
    }
    builder.face(FaceLabel.MESH, 1, new int[] {3, 2, 1, 0});
    for (int i = 0; i < 4; i++) {
      builder.face(FaceLabel.MESH, 1, new int[] {i, (i + 1) % 4, 4});
    }
    return new BuildResult.Built(List.of(Part.of(builder.build(), 1)), Optional.empty(), List.of());
  }

  /** The region right of the z axis, drawn in x and z, turned all round. */
  private static BuildResult.Built turned(Curve2 outline, Transform3 position, Transform3 at) {
    var upright = new Transform3(Vec3.X, Vec3.Z, new Vec3(0, -1, 0), Vec3.ZERO);
    Profile profile = new Profile.Outline("", outline, List.of());
    return plain(
        Revolutions.build(
            new Shape.Revolution(
                profile, position.after(upright), Vec3.ZERO, new Vec3(0, 1, 0), 2 * Math.PI),
            at));
  }

  /** The same without a run: a primitive has no way of its own. */
  private static BuildResult.Built plain(BuildResult.Built built) {
    return new BuildResult.Built(built.parts(), Optional.empty(), new ArrayList<>(built.notes()));
  }
}
