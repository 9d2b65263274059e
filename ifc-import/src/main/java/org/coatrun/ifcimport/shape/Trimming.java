package org.coatrun.ifcimport.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.ifcimport.part21.Value;
import org.coatrun.shared.shape.Segment3;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/**
 * Parts of curves, by parameter or by points. The parameter of a conic is an angle in the file's
 * unit, that of a line counts its vector, that of a polyline its points.
 */
final class Trimming {

  private static final double WHOLE = 1e-6;

  private final CurveReader curves;

  Trimming(CurveReader curves) {
    this.curves = curves;
  }

  /** One end of a trimmed curve. */
  private record Trim(OptionalDouble parameter, Optional<Vec3> point) {}

  List<Segment3> trimmed(Entity curve) {
    Entity basis = curve.need("BasisCurve");
    boolean byParameter = curve.item("MasterRepresentation").orElse("").equals("PARAMETER");
    Trim from = trim(curve, "Trim1");
    Trim to = trim(curve, "Trim2");
    boolean forwards = curve.flag("SenseAgreement").orElse(true);
    if (basis.isA("IfcConic")) {
      Segment3.Arc whole = curves.conic(basis);
      double a = conicParameter(whole, from, byParameter, curve);
      double b = conicParameter(whole, to, byParameter, curve);
      return List.of(Arcs.part(whole, a, b, forwards));
    }
    if (basis.isA("IfcLine")) {
      Segment3.Line line = curves.line(basis);
      Vec3 a = linePoint(line, from, byParameter, curve);
      Vec3 b = linePoint(line, to, byParameter, curve);
      return a.distance(b) > Pieces.SAME ? List.of(new Segment3.Line(a, b)) : List.of();
    }
    List<Segment3> part = between(basis, from, to, forwards, curve);
    return forwards ? part : Pieces.reversed(part);
  }

  private Trim trim(Entity curve, String attribute) {
    OptionalDouble parameter = OptionalDouble.empty();
    Optional<Vec3> point = Optional.empty();
    for (Value v : curve.value(attribute).items()) {
      if (v.asRef().isPresent()) {
        point = Optional.of(curves.axes().point(curve.model().get(v.asRef().getAsLong())));
      } else if (v.asReal().isPresent()) {
        parameter = v.asReal();
      }
    }
    if (parameter.isEmpty() && point.isEmpty()) {
      throw curve.broken(attribute + " is neither a point nor a parameter");
    }
    return new Trim(parameter, point);
  }

  private double conicParameter(Segment3.Arc whole, Trim trim, boolean byParameter, Entity of) {
    if (trim.parameter.isPresent() && (byParameter || trim.point.isEmpty())) {
      return trim.parameter.getAsDouble() * curves.angle();
    }
    return Arcs.parameter(whole, trim.point.orElseThrow(() -> of.broken("it has no end")));
  }

  private static Vec3 linePoint(Segment3.Line line, Trim trim, boolean byParameter, Entity of) {
    if (trim.parameter.isPresent() && (byParameter || trim.point.isEmpty())) {
      return line.from().plus(line.to().minus(line.from()).times(trim.parameter.getAsDouble()));
    }
    return trim.point.orElseThrow(() -> of.broken("it has no end"));
  }

  private List<Segment3> between(Entity basis, Trim from, Trim to, boolean forwards, Entity curve) {
    Trim low = forwards ? from : to;
    Trim high = forwards ? to : from;
    if (low.parameter.isEmpty() || high.parameter.isEmpty()) {
      List<Segment3> all = curves.pieces(basis);
      Vec3 a = low.point.orElse(Pieces.start(all.get(0)));
      Vec3 b = high.point.orElse(Pieces.end(all.get(all.size() - 1)));
      if (a.distance(Pieces.start(all.get(0))) < WHOLE
          && b.distance(Pieces.end(all.get(all.size() - 1))) < WHOLE) {
        return all;
      }
      throw curve.broken("a " + basis.kind() + " trimmed by points is not handled");
    }
    return part(basis, low.parameter, high.parameter);
  }

  /**
   * The part of a curve between two parameters; where one is missing, up to that end.
   *
   * <p>Of composite curves and splines only the whole is handled.
   */
  List<Segment3> part(Entity curve, OptionalDouble from, OptionalDouble to) {
    if (from.isEmpty() && to.isEmpty()) {
      return curves.pieces(curve);
    }
    if (curve.isA("IfcConic")) {
      Segment3.Arc whole = curves.conic(curve);
      double a = from.orElse(0) * curves.angle();
      double b = to.isPresent() ? to.getAsDouble() * curves.angle() : 2 * Math.PI;
      return List.of(Arcs.part(whole, a, b, true));
    }
    if (curve.isA("IfcLine")) {
      Segment3.Line line = curves.line(curve);
      Vec3 along = line.to().minus(line.from());
      return List.of(
          new Segment3.Line(
              line.from().plus(along.times(from.orElse(0))),
              line.from().plus(along.times(to.orElse(1)))));
    }
    if (curve.isA("IfcPolyline")) {
      return polylinePart(curve, from.orElse(0), to.orElse(Double.MAX_VALUE));
    }
    return wholeOnly(curve, from, to);
  }

  private List<Segment3> polylinePart(Entity curve, double from, double to) {
    List<Vec3> points = curve.needRefs("Points").stream().map(curves.axes()::point).toList();
    double last = Math.min(to, points.size() - 1);
    double first = Math.max(0, from);
    if (!(first < last)) {
      throw curve.broken("nothing of it is left between its two parameters");
    }
    var part = new ArrayList<Vec3>();
    part.add(onPolyline(points, first));
    for (int i = (int) Math.floor(first) + 1; i < last; i++) {
      part.add(points.get(i));
    }
    part.add(onPolyline(points, last));
    return Pieces.lines(part);
  }

  private static Vec3 onPolyline(List<Vec3> points, double at) {
    int i = Math.min((int) Math.floor(at), points.size() - 2);
    Vec3 step = points.get(i + 1).minus(points.get(i));
    return points.get(i).plus(step.times(at - i));
  }

  private List<Segment3> wholeOnly(Entity curve, OptionalDouble from, OptionalDouble to) {
    List<Segment3> all = curves.pieces(curve);
    boolean fromStart = Math.abs(from.orElse(0)) < WHOLE || isParameterOfStart(all, from);
    boolean toEnd =
        to.isEmpty()
            || Math.abs(to.getAsDouble() - range(curve, all)) < WHOLE * Math.abs(to.getAsDouble())
            || Math.abs(to.getAsDouble() - all.size()) < WHOLE;
    if (fromStart && toEnd) {
      return all;
    }
    if (curve.isA("IfcTrimmedCurve")) {
      return part(curve.need("BasisCurve"), from, to);
    }
    throw curve.broken("only the whole of such a curve is handled, not a part of it");
  }

  private static boolean isParameterOfStart(List<Segment3> all, OptionalDouble from) {
    return all.get(0) instanceof Segment3.Spline s
        && Math.abs(s.knots().get(0) - from.orElse(0)) < WHOLE;
  }

  /** The parameter at the end of a curve that begins at zero. */
  private double range(Entity curve, List<Segment3> pieces) {
    if (curve.isA("IfcCompositeCurve")) {
      double sum = 0;
      for (Entity segment : curve.needRefs("Segments")) {
        Optional<Entity> parent = segment.ref("ParentCurve");
        if (parent.isEmpty()) {
          return Double.NaN;
        }
        sum += range(parent.get(), curves.pieces(parent.get()));
      }
      return sum;
    }
    if (curve.isA("IfcTrimmedCurve")) {
      OptionalDouble a = trim(curve, "Trim1").parameter;
      OptionalDouble b = trim(curve, "Trim2").parameter;
      return a.isPresent() && b.isPresent()
          ? Math.abs(b.getAsDouble() - a.getAsDouble())
          : Double.NaN;
    }
    if (pieces.size() == 1 && pieces.get(0) instanceof Segment3.Spline s) {
      return s.knots().get(s.knots().size() - 1);
    }
    return pieces.size();
  }

  /** A piece of a 4.3 alignment or directrix: a part of a line or circle, put in its place. */
  List<Segment3> alignmentSegment(Entity segment) {
    Entity parent = segment.need("ParentCurve");
    double unit = curves.axes().length();
    double from = segment.needNumber("SegmentStart") * unit;
    double span = segment.needNumber("SegmentLength") * unit;
    Segment3 piece;
    Transform3 natural;
    if (parent.isA("IfcLine")) {
      Segment3.Line line = curves.line(parent);
      Vec3 along = line.to().minus(line.from()).unit();
      Vec3 start = line.from().plus(along.times(from));
      piece = new Segment3.Line(start, start.plus(along.times(span)));
      natural = Transform3.frame(start, Vec3.Z, along);
    } else if (parent.isA("IfcCircle")) {
      Segment3.Arc circle = curves.conic(parent);
      double radius = circle.u().length();
      var arc =
          new Segment3.Arc(circle.centre(), circle.u(), circle.v(), from / radius, span / radius);
      piece = arc;
      Vec3 tangent =
          arc.v().times(Math.cos(arc.start())).minus(arc.u().times(Math.sin(arc.start())));
      natural = Transform3.frame(arc.at(arc.start()), Vec3.Z, tangent);
    } else {
      throw parent.broken("this kind of alignment curve is not handled");
    }
    Transform3 placed = curves.axes().frame(segment.need("Placement"));
    return List.of(piece.map(placed.after(natural.inverse())));
  }
}
