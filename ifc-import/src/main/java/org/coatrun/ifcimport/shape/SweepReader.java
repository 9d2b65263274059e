package org.coatrun.ifcimport.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.shared.shape.Curve3;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** Solids that come from carrying a profile or a disk along. */
final class SweepReader {

  private final CurveReader curves;
  private final Axes axes;
  private final ProfileReader profiles;

  SweepReader(CurveReader curves, ProfileReader profiles) {
    this.curves = curves;
    this.axes = curves.axes();
    this.profiles = profiles;
  }

  Shape extruded(Entity s) {
    Transform3 position = axes.frame(s, "Position");
    Vec3 direction = Axes.direction(s.need("ExtrudedDirection"));
    double length = length(s, "Depth");
    var start = profiles.profile(s.need("SweptArea"));
    return s.isA("IfcExtrudedAreaSolidTapered")
        ? new Shape.TaperedExtrusion(
            start, profiles.profile(s.need("EndSweptArea")), position, direction, length)
        : new Shape.Extrusion(start, position, direction, length);
  }

  Shape revolved(Entity s) {
    Transform3 position = axes.frame(s, "Position");
    Entity axis = s.need("Axis");
    Vec3 point = axes.point(axis.need("Location"));
    Vec3 direction = axis.ref("Axis").map(Axes::direction).orElse(Vec3.Z);
    double angle = s.needNumber("Angle") * curves.angle();
    if (angle == 0) {
      throw s.broken("its angle is zero");
    }
    var start = profiles.profile(s.need("SweptArea"));
    return s.isA("IfcRevolvedAreaSolidTapered")
        ? new Shape.TaperedRevolution(
            start, profiles.profile(s.need("EndSweptArea")), position, point, direction, angle)
        : new Shape.Revolution(start, position, point, direction, angle);
  }

  Shape alongCurve(Entity s) {
    Shape.Guide guide;
    if (s.isA("IfcSurfaceCurveSweptAreaSolid")) {
      guide =
          new Shape.Guide.OnSurface(new SurfaceReader(curves).surface(s.need("ReferenceSurface")));
    } else {
      guide = new Shape.Guide.FixedReference(Axes.direction(s.need("FixedReference")));
    }
    return new Shape.Sweep(
        profiles.profile(s.need("SweptArea")), axes.frame(s, "Position"), directrix(s), guide);
  }

  Shape disk(Entity s) {
    OptionalDouble inner = s.number("InnerRadius");
    OptionalDouble fillet = s.number("FilletRadius");
    return new Shape.SweptDisk(directrix(s), length(s, "Radius"), scaled(inner), scaled(fillet));
  }

  private OptionalDouble scaled(OptionalDouble value) {
    return value.isPresent()
        ? OptionalDouble.of(value.getAsDouble() * axes.length())
        : OptionalDouble.empty();
  }

  private Curve3 directrix(Entity s) {
    Entity curve = s.need("Directrix");
    return Pieces.curve(
        new Trimming(curves).part(curve, s.number("StartParam"), s.number("EndParam")), s);
  }

  Shape spine(Entity s) {
    List<Entity> sections = s.needRefs("CrossSections");
    List<Entity> positions = s.needRefs("CrossSectionPositions");
    if (sections.size() != positions.size() || sections.size() < 2) {
      throw s.broken("its sections and their positions do not match");
    }
    var stations = new ArrayList<Shape.Station>();
    for (int i = 0; i < sections.size(); i++) {
      stations.add(
          new Shape.Station(profiles.profile(sections.get(i)), station(s, positions.get(i))));
    }
    return new Shape.Sectioned(stations);
  }

  private Transform3 station(Entity s, Entity position) {
    if (position.isA("IfcAxis2PlacementLinear")) {
      return new AlongCurve(curves).frame(s.need("Directrix"), position);
    }
    return axes.frame(position);
  }

  private double length(Entity s, String attribute) {
    double value = s.needNumber(attribute) * axes.length();
    if (!(value > 0)) {
      throw s.broken(attribute + " is not above zero");
    }
    return value;
  }
}
