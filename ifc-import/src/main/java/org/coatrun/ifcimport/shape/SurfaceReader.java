package org.coatrun.ifcimport.shape;

import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.shared.shape.Curve3;
import org.coatrun.shared.shape.Surface;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** Surfaces that faces lie on. */
final class SurfaceReader {

  private final CurveReader curves;
  private final Axes axes;

  SurfaceReader(CurveReader curves) {
    this.curves = curves;
    this.axes = curves.axes();
  }

  Surface surface(Entity s) {
    return switch (s.kind()) {
      case "IfcPlane" -> new Surface.Plane(position(s));
      case "IfcCylindricalSurface" -> new Surface.Cylinder(position(s), length(s, "Radius"));
      case "IfcSphericalSurface" -> new Surface.Sphere(position(s), length(s, "Radius"));
      case "IfcToroidalSurface" ->
          new Surface.Torus(position(s), length(s, "MajorRadius"), length(s, "MinorRadius"));
      case "IfcSurfaceOfLinearExtrusion" -> extrusion(s);
      case "IfcSurfaceOfRevolution" -> revolution(s);
      case "IfcBSplineSurfaceWithKnots", "IfcRationalBSplineSurfaceWithKnots" ->
          Splines.surface(s, axes);
      case "IfcCurveBoundedPlane", "IfcCurveBoundedSurface", "IfcRectangularTrimmedSurface" ->
          surface(s.need("BasisSurface"));
      default -> new Surface.Unsupported(s.kind());
    };
  }

  private Transform3 position(Entity s) {
    return axes.frame(s.need("Position"));
  }

  private double length(Entity s, String attribute) {
    return s.needNumber(attribute) * axes.length();
  }

  private Surface extrusion(Entity s) {
    Transform3 frame = axes.frame(s, "Position");
    Vec3 along = Axes.direction(s.need("ExtrudedDirection")).times(length(s, "Depth"));
    return new Surface.Swept(sweptCurve(s).map(frame), frame.applyVector(along));
  }

  private Surface revolution(Entity s) {
    Transform3 frame = axes.frame(s, "Position");
    Entity axis = s.need("AxisPosition");
    Vec3 direction = axis.ref("Axis").map(Axes::direction).orElse(Vec3.Z);
    return new Surface.Revolved(
        sweptCurve(s).map(frame),
        frame.apply(axes.point(axis.need("Location"))),
        frame.applyVector(direction));
  }

  /** The curve of the profile that is swept into a surface. */
  private Curve3 sweptCurve(Entity s) {
    Entity profile = s.need("SweptCurve");
    Entity curve =
        profile
            .ref("Curve")
            .or(() -> profile.ref("OuterCurve"))
            .orElseThrow(() -> profile.broken("this kind of swept curve is not handled"));
    return curves.curve(curve);
  }
}
