package org.coatrun.ifcimport.shape;

import java.util.List;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.shared.shape.Segment3;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** Frames that stand at a distance along a curve of straight and circular pieces. */
final class AlongCurve {

  private final CurveReader curves;

  AlongCurve(CurveReader curves) {
    this.curves = curves;
  }

  /** A place on a curve and the way the curve runs there. */
  private record Spot(Vec3 point, Vec3 tangent) {}

  /** The section's frame: its normal along the curve, its y axis up. */
  Transform3 frame(Entity directrix, Entity placement) {
    Entity at = placement.need("Location");
    if (!at.isA("IfcPointByDistanceExpression")) {
      throw at.broken("this kind of location along a curve is not handled");
    }
    double unit = curves.axes().length();
    Spot spot = spot(directrix, at.needNumber("DistanceAlong") * unit);
    Vec3 tangent = spot.tangent.unit();
    Vec3 left = Vec3.Z.cross(tangent).unit();
    Vec3 up = tangent.cross(left);
    Vec3 point =
        spot.point
            .plus(left.times(at.number("OffsetLateral").orElse(0) * unit))
            .plus(up.times(at.number("OffsetVertical").orElse(0) * unit));
    Vec3 x = left.length() < 0.5 ? tangent.anyPerpendicular() : left.times(-1);
    return Transform3.frame(point, tangent, x);
  }

  private Spot spot(Entity directrix, double distance) {
    List<Segment3> pieces = curves.pieces(directrix);
    double left = distance;
    for (Segment3 piece : pieces) {
      double length = length(piece, directrix);
      if (left <= length + 1e-9) {
        return at(piece, length == 0 ? 0 : left / length);
      }
      left -= length;
    }
    throw directrix.broken("a section stands beyond its end");
  }

  private static double length(Segment3 piece, Entity of) {
    if (piece instanceof Segment3.Line line) {
      return line.from().distance(line.to());
    }
    if (piece instanceof Segment3.Arc arc && Math.abs(arc.u().length() - arc.v().length()) < 1e-9) {
      return Math.abs(arc.sweep()) * arc.u().length();
    }
    throw of.broken("only straight and circular pieces are handled here");
  }

  private static Spot at(Segment3 piece, double share) {
    if (piece instanceof Segment3.Line line) {
      Vec3 way = line.to().minus(line.from());
      return new Spot(line.from().plus(way.times(share)), way);
    }
    var arc = (Segment3.Arc) piece;
    double t = arc.start() + share * arc.sweep();
    Vec3 tangent =
        arc.v()
            .times(Math.cos(t))
            .minus(arc.u().times(Math.sin(t)))
            .times(Math.signum(arc.sweep()));
    return new Spot(arc.at(t), tangent);
  }
}
