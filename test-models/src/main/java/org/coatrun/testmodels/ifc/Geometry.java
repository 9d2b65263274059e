package org.coatrun.testmodels.ifc;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.coatrun.testmodels.shape.Frame;
import org.coatrun.testmodels.shape.Vec2;
import org.coatrun.testmodels.shape.Vec3;
import org.coatrun.testmodels.step.Ref;
import org.coatrun.testmodels.step.Token;

/** Points, directions, placements and lines. */
public final class Geometry {
  private final IfcWriter ifc;
  private final Map<Vec3, Ref> axes = new HashMap<>();

  Geometry(IfcWriter ifc) {
    this.ifc = ifc;
  }

  /** Adds a point in space. */
  public Ref point(Vec3 p) {
    double[] at = {ifc.length(p.x()), ifc.length(p.y()), ifc.length(p.z())};
    return ifc.add("IFCCARTESIANPOINT", at);
  }

  /** Adds a point in a plane. */
  public Ref point(Vec2 p) {
    return ifc.add("IFCCARTESIANPOINT", new double[] {ifc.length(p.x()), ifc.length(p.y())});
  }

  /** Adds a direction; the six main ones once. */
  public Ref direction(Vec3 d) {
    Vec3 clean = new Vec3(d.x() + 0.0, d.y() + 0.0, d.z() + 0.0);
    boolean main = Math.abs(d.x()) + Math.abs(d.y()) + Math.abs(d.z()) == 1;
    return main ? axes.computeIfAbsent(clean, this::newDirection) : newDirection(clean);
  }

  private Ref newDirection(Vec3 d) {
    return ifc.add("IFCDIRECTION", new double[] {d.x(), d.y(), d.z()});
  }

  /** Adds an axis placement; axes that are the world's are left out, as exporters do. */
  public Ref placement(Frame frame) {
    Ref origin = point(frame.origin());
    if (frame.x().equals(Vec3.X) && frame.z().equals(Vec3.Z)) {
      return ifc.add("IFCAXIS2PLACEMENT3D", origin, Token.UNSET, Token.UNSET);
    }
    Ref z = direction(frame.z());
    return ifc.add("IFCAXIS2PLACEMENT3D", origin, z, direction(frame.x()));
  }

  /** Adds an object placement within another. */
  public Ref local(Ref parent, Frame frame) {
    return ifc.add("IFCLOCALPLACEMENT", parent, placement(frame));
  }

  /** Adds an object placement in the world. */
  public Ref local(Frame frame) {
    return ifc.add("IFCLOCALPLACEMENT", Token.UNSET, placement(frame));
  }

  /** Adds a closed line in a plane; the first corner is given once. */
  public Ref closed(List<Vec2> corners) {
    List<Object> refs = new ArrayList<>(corners.size() + 1);
    corners.forEach(p -> refs.add(point(p)));
    refs.add(refs.get(0));
    return ifc.add("IFCPOLYLINE", refs);
  }

  /** Adds an open line in space. */
  public Ref line(List<Vec3> points) {
    return ifc.add("IFCPOLYLINE", points.stream().map(this::point).toList());
  }

  /** Adds an open line in a plane. */
  public Ref flatLine(List<Vec2> points) {
    return ifc.add("IFCPOLYLINE", points.stream().map(this::point).toList());
  }
}
