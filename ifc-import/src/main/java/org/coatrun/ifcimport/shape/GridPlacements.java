package org.coatrun.ifcimport.shape;

import java.util.List;
import java.util.Optional;
import org.coatrun.ifcimport.entity.Entity;
import org.coatrun.shared.shape.Segment3;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** Frames at the crossing of two grid axes, straight or circular. */
final class GridPlacements {

  private final Axes axes;
  private final double angle;

  GridPlacements(Axes axes, double angle) {
    this.axes = axes;
    this.angle = angle;
  }

  /** A grid axis moved sideways by its offset. */
  private record Line(Vec3 point, Vec3 direction) {}

  /** The frame in the axes of the grid: x along the first axis, or towards what the file names. */
  Transform3 frame(Entity placement) {
    Entity crossing = placement.need("PlacementLocation");
    Line first = line(crossing, 0);
    Vec3 at = cross(crossing);
    return Transform3.frame(at, Vec3.Z, reference(placement, at).orElse(first.direction));
  }

  private Optional<Vec3> reference(Entity placement, Vec3 at) {
    Optional<Entity> given = placement.ref("PlacementRefDirection");
    if (given.isEmpty()) {
      return Optional.empty();
    }
    return given.get().isA("IfcVirtualGridIntersection")
        ? Optional.of(cross(given.get()).minus(at))
        : Optional.of(Axes.direction(given.get()));
  }

  private Vec3 cross(Entity crossing) {
    Line a = line(crossing, 0);
    Line b = line(crossing, 1);
    double det = a.direction.x() * b.direction.y() - a.direction.y() * b.direction.x();
    if (Math.abs(det) < 1e-12) {
      throw crossing.broken("its two axes do not cross");
    }
    Vec3 between = b.point.minus(a.point);
    double t = (between.x() * b.direction.y() - between.y() * b.direction.x()) / det;
    List<Double> offsets = crossing.numbers("OffsetDistances");
    double up = offsets.size() > 2 ? offsets.get(2) * axes.length() : 0;
    Vec3 at = a.point.plus(a.direction.times(t));
    return new Vec3(at.x(), at.y(), at.z() + up);
  }

  private Line line(Entity crossing, int which) {
    List<Entity> pair = crossing.needRefs("IntersectingAxes");
    if (pair.size() < 2) {
      throw crossing.broken("it needs two axes");
    }
    Entity axis = pair.get(which);
    List<Segment3> pieces = pieces(axis);
    if (pieces.isEmpty() || !(pieces.get(0) instanceof Segment3.Line straight)) {
      throw axis.broken("only straight grid axes are handled");
    }
    Vec3 way = straight.to().minus(straight.from()).unit();
    Vec3 forwards = axis.flag("SameSense").orElse(true) ? way : way.times(-1);
    List<Double> offsets = crossing.numbers("OffsetDistances");
    double aside = offsets.size() > which ? offsets.get(which) * axes.length() : 0;
    Vec3 left = Vec3.Z.cross(forwards);
    return new Line(straight.from().plus(left.times(aside)), forwards);
  }

  private List<Segment3> pieces(Entity axis) {
    try {
      return new CurveReader(axes, angle, new Depth()).pieces(axis.need("AxisCurve"));
    } catch (EndlessShapeException e) {
      throw axis.broken(e.getMessage());
    }
  }
}
