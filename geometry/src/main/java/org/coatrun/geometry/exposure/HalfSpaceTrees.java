package org.coatrun.geometry.exposure;

import java.util.List;
import org.coatrun.geometry.build.BuildResult;
import org.coatrun.geometry.build.ShapeBuilder;
import org.coatrun.geometry.solid.Box;
import org.coatrun.geometry.solid.HalfSpaces;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.geometry.solid.SolidTree;
import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Curve2;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;

/** Half-spaces, bounded or not, as far as their host reaches. */
final class HalfSpaceTrees {

  private HalfSpaceTrees() {}

  static SolidTree of(Shape.HalfSpace h, Transform3 at, Box host) {
    Plane plane = plane(h, at);
    if (h.bound().isEmpty()) {
      return SolidTree.of(HalfSpaces.solid(plane, host));
    }
    Transform3 frame = at.after(h.bound().get().position());
    Curve2 outline = h.bound().get().outline();
    double[] corners = corners(outline);
    return corners.length == 0
        ? curved(plane, frame, outline, host)
        : HalfSpaces.bounded(plane, frame, corners, host);
  }

  /** The plane mapped: its tangents are, and the filled side stays the filled side. */
  private static Plane plane(Shape.HalfSpace h, Transform3 at) {
    Vec3 n = h.outward().unit();
    Vec3 a = n.anyPerpendicular();
    Vec3 normal = at.applyVector(a).cross(at.applyVector(n.cross(a)));
    if (normal.dot(at.applyVector(n)) < 0) {
      normal = normal.times(-1);
    }
    Vec3 p = at.apply(h.point());
    return Plane.through(p.x(), p.y(), p.z(), normal.x(), normal.y(), normal.z());
  }

  /** Corners of a polyline, counter-clockwise; none where the outline has curves. */
  private static double[] corners(Curve2 outline) {
    int n = outline.segments().size();
    double[] out = new double[2 * n];
    double area = 0;
    for (int i = 0; i < n; i++) {
      if (!(outline.segments().get(i) instanceof Segment2.Line line)) {
        return new double[0];
      }
      Vec2 p = line.from();
      out[2 * i] = p.x();
      out[2 * i + 1] = p.y();
      area += p.x() * line.to().y() - p.y() * line.to().x();
    }
    return area < 0 ? reversed(out) : out;
  }

  private static double[] reversed(double[] ring) {
    double[] out = new double[ring.length];
    for (int i = 0; i < ring.length; i += 2) {
      out[i] = ring[ring.length - 2 - i];
      out[i + 1] = ring[ring.length - 1 - i];
    }
    return out;
  }

  private static SolidTree curved(Plane plane, Transform3 frame, Curve2 outline, Box host) {
    double dx = host.centreX() - frame.origin().x();
    double dy = host.centreY() - frame.origin().y();
    double dz = host.centreZ() - frame.origin().z();
    double far =
        (2 * host.diagonal() + 1 + Math.sqrt(dx * dx + dy * dy + dz * dz)) / frame.z().length();
    Transform3 down = Transform3.translation(new Vec3(0, 0, -far));
    Shape prism =
        new Shape.Extrusion(new Profile.Outline("", outline, List.of()), down, Vec3.Z, 2 * far);
    BuildResult result = ShapeBuilder.build(prism, frame);
    if (result instanceof BuildResult.Built built && built.parts().size() == 1) {
      SolidTree inside = built.parts().get(0).tree();
      SolidTree half = SolidTree.of(HalfSpaces.solid(plane, inside.bounds()));
      return new SolidTree.Intersection(List.of(inside, half));
    }
    throw new NoTreeException(
        SurfaceFinding.NOT_MEASURED,
        "bounded half-space",
        "The boundary of a half-space could not be drawn.");
  }
}
