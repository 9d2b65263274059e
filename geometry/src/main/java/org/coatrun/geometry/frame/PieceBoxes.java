package org.coatrun.geometry.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coatrun.geometry.exposure.Axis;
import org.coatrun.geometry.exposure.Form;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.shared.shape.Vec3;

/**
 * Lays a box about a body: along its axis where it has one, else along the longest of the three
 * directions that its largest faces give.
 */
final class PieceBoxes {

  private static final double SQUARE = 0.1;

  private PieceBoxes() {}

  static OrientedBox about(Form body) {
    List<Patch> patches = body.boundary().patches();
    List<double[]> points = new ArrayList<>(patches.size());
    patches.forEach(p -> points.add(p.corners()));
    Optional<Vec3> along = body.axis().map(Axis::direction);
    if (along.isPresent()) {
      return OrientedBox.of(points, along.get(), widestNormal(patches, along.get()));
    }
    Vec3 first = widestNormal(patches, Vec3.ZERO);
    Vec3 second = widestNormal(patches, first);
    OrientedBox box = OrientedBox.of(points, first, second);
    return OrientedBox.of(points, longest(box), box.along());
  }

  private static Vec3 longest(OrientedBox box) {
    if (box.halfLength() >= Math.max(box.halfWidth(), box.halfHeight())) {
      return box.along();
    }
    return box.halfWidth() >= box.halfHeight() ? box.across() : box.up();
  }

  /** The normal of the largest patch that is square to a direction; some normal where none is. */
  private static Vec3 widestNormal(List<Patch> patches, Vec3 to) {
    double most = 0;
    Vec3 best = to.length() == 0 ? Vec3.Z : to.anyPerpendicular();
    for (Patch p : patches) {
      Vec3 n = new Vec3(p.plane().nx(), p.plane().ny(), p.plane().nz());
      if (p.flatArea() > most && Math.abs(n.dot(to)) < SQUARE) {
        most = p.flatArea();
        best = n;
      }
    }
    return best;
  }
}
