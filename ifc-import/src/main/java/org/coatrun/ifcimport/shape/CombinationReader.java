package org.coatrun.ifcimport.shape;

import java.util.Optional;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** Booleans, half-spaces and the primitives that are combined. */
final class CombinationReader {

  private final CurveReader curves;
  private final Axes axes;
  private final ItemReader items;

  CombinationReader(CurveReader curves, ItemReader items) {
    this.curves = curves;
    this.axes = curves.axes();
    this.items = items;
  }

  Shape combination(Entity c) {
    Shape.Operator operator =
        switch (c.item("Operator").orElse("")) {
          case "UNION" -> Shape.Operator.UNION;
          case "INTERSECTION" -> Shape.Operator.INTERSECTION;
          case "DIFFERENCE" -> Shape.Operator.DIFFERENCE;
          default -> throw c.broken("its operator is unknown");
        };
    return new Shape.Combination(
        operator, items.item(c.need("FirstOperand")), items.item(c.need("SecondOperand")));
  }

  Shape primitive(Entity p) {
    return switch (p.kind()) {
      case "IfcCsgSolid" -> items.item(p.need("TreeRootExpression"));
      case "IfcHalfSpaceSolid", "IfcBoxedHalfSpace" -> halfSpace(p, Optional.empty());
      case "IfcPolygonalBoundedHalfSpace" -> halfSpace(p, Optional.of(bound(p)));
      case "IfcBlock" ->
          new Shape.Block(
              position(p), above(p, "XLength"), above(p, "YLength"), above(p, "ZLength"));
      case "IfcRectangularPyramid" ->
          new Shape.Pyramid(
              position(p), above(p, "XLength"), above(p, "YLength"), above(p, "Height"));
      case "IfcRightCircularCone" ->
          new Shape.Cone(position(p), above(p, "BottomRadius"), above(p, "Height"));
      case "IfcRightCircularCylinder" ->
          new Shape.Cylinder(position(p), above(p, "Radius"), above(p, "Height"));
      case "IfcSphere" -> new Shape.Sphere(position(p), above(p, "Radius"));
      default -> throw p.broken("this kind of body is not handled");
    };
  }

  /**
   * The standard: with AgreementFlag true the plane's normal points away from the material. The box
   * of a boxed half-space only tells readers where to look and bounds nothing.
   */
  private Shape halfSpace(Entity h, Optional<Shape.Bound> bound) {
    Entity surface = h.need("BaseSurface");
    if (!surface.isA("IfcPlane")) {
      throw surface.broken("only planes are handled as bounds of a half-space");
    }
    Transform3 plane = axes.frame(surface.need("Position"));
    boolean agrees =
        h.flag("AgreementFlag").orElseThrow(() -> h.broken("AgreementFlag is missing"));
    Vec3 outward = agrees ? plane.z() : plane.z().times(-1);
    return new Shape.HalfSpace(plane.origin(), outward, bound);
  }

  private Shape.Bound bound(Entity h) {
    return new Shape.Bound(position(h), Pieces.flat(curves.closed(h.need("PolygonalBoundary"))));
  }

  private Transform3 position(Entity p) {
    return axes.frame(p, "Position");
  }

  private double above(Entity p, String attribute) {
    double value = p.needNumber(attribute) * axes.length();
    if (!(value > 0)) {
      throw p.broken(attribute + " is not above zero");
    }
    return value;
  }
}
