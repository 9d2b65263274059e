package org.coatrun.ifcimport.shape;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.ifcimport.part21.Value;
import org.coatrun.shared.shape.Curve3;
import org.coatrun.shared.shape.Segment3;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** Curves of every kind, in space; those in a plane lie in z = 0. */
final class CurveReader {

  private final Axes axes;
  private final double angle;
  private final Depth depth;

  CurveReader(Axes axes, double angle, Depth depth) {
    this.axes = axes;
    this.angle = angle;
    this.depth = depth;
  }

  Axes axes() {
    return axes;
  }

  /** Radians in one unit of the parameter of a conic. */
  double angle() {
    return angle;
  }

  Curve3 curve(Entity curve) {
    return Pieces.curve(pieces(curve), curve);
  }

  Curve3 closed(Entity curve) {
    return Pieces.closed(pieces(curve), curve);
  }

  /** The pieces of a curve; a line without bounds comes as long as its vector. */
  List<Segment3> pieces(Entity curve) {
    return depth.within(() -> piecesOf(curve));
  }

  private List<Segment3> piecesOf(Entity curve) {
    if (curve.isA("IfcPolyline")) {
      return Pieces.lines(curve.needRefs("Points").stream().map(axes::point).toList());
    }
    if (curve.isA("IfcIndexedPolyCurve")) {
      return indexed(curve);
    }
    if (curve.isA("IfcTrimmedCurve")) {
      return new Trimming(this).trimmed(curve);
    }
    if (curve.isA("IfcCompositeCurve")) {
      return composite(curve);
    }
    if (curve.isA("IfcConic")) {
      return List.of(conic(curve));
    }
    if (curve.isA("IfcLine")) {
      return List.of(line(curve));
    }
    if (curve.isA("IfcBSplineCurve")) {
      return List.of(Splines.curve(curve, axes));
    }
    if (curve.isA("IfcSurfaceCurve")) {
      return pieces(curve.need("Curve3D"));
    }
    throw curve.broken("this kind of curve is not handled");
  }

  Segment3.Arc conic(Entity conic) {
    Transform3 frame = axes.frame(conic.need("Position"));
    boolean circle = conic.isA("IfcCircle");
    double semi1 = length(conic, circle ? "Radius" : "SemiAxis1");
    double semi2 = circle ? semi1 : length(conic, "SemiAxis2");
    return Arcs.whole(frame, semi1, semi2);
  }

  private double length(Entity of, String attribute) {
    double value = of.needNumber(attribute) * axes.length();
    if (!(value > 0)) {
      throw of.broken(attribute + " is not above zero");
    }
    return value;
  }

  /** From a line's point to the point one vector further on. */
  Segment3.Line line(Entity line) {
    Entity vector = line.need("Dir");
    double magnitude = vector.needNumber("Magnitude") * axes.length();
    Vec3 from = axes.point(line.need("Pnt"));
    Vec3 along = Axes.direction(vector.need("Orientation")).times(magnitude);
    return new Segment3.Line(from, from.plus(along));
  }

  private List<Segment3> composite(Entity curve) {
    var pieces = new ArrayList<Segment3>();
    for (Entity segment : curve.needRefs("Segments")) {
      if (segment.isA("IfcCurveSegment")) {
        pieces.addAll(new Trimming(this).alignmentSegment(segment));
        continue;
      }
      List<Segment3> parent = pieces(segment.need("ParentCurve"));
      boolean same = segment.flag("SameSense").orElse(true);
      pieces.addAll(same ? parent : Pieces.reversed(parent));
    }
    return pieces;
  }

  private List<Segment3> indexed(Entity curve) {
    List<Vec3> points = PointLists.points(curve.need("Points"), axes);
    List<Value> segments = curve.value("Segments").items();
    if (segments.isEmpty()) {
      return Pieces.lines(points);
    }
    var pieces = new ArrayList<Segment3>();
    for (Value segment : segments) {
      List<Vec3> on = new ArrayList<>();
      for (Value index : segment.items()) {
        on.add(PointLists.at(points, index, curve));
      }
      if (on.size() < 2) {
        throw curve.broken("a segment needs two points");
      }
      boolean arc = segment.typeName().orElse("").equals("IFCARCINDEX") && on.size() == 3;
      pieces.addAll(
          arc ? List.of(Arcs.through(on.get(0), on.get(1), on.get(2))) : Pieces.lines(on));
    }
    return pieces;
  }
}
