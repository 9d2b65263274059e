package org.coatrun.geometry.section;

import org.coatrun.geometry.exposure.Axis;
import org.coatrun.geometry.exposure.CoveredPatch;
import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.shared.shape.Vec3;

/**
 * The rectangle about a member, square to its largest side face, and how much of each of its four
 * sides is exposed: as much as of the faces that lie on it.
 *
 * @param whole its perimeter, m
 * @param heated its exposed part, m
 */
record BoxSides(double whole, double heated) {

  private static final double ALIGNED = 0.999;
  private static final double ON_SIDE = 1e-3;

  static BoxSides of(Exposure exposure, Axis axis) {
    Vec3 first = largest(exposure, axis.direction());
    Vec3 second = axis.direction().cross(first);
    double[] a = extent(exposure, first);
    double[] b = extent(exposure, second);
    double wide = b[1] - b[0];
    double deep = a[1] - a[0];
    double heated =
        wide * (open(exposure, first, a[1]) + open(exposure, first.times(-1), -a[0]))
            + deep * (open(exposure, second, b[1]) + open(exposure, second.times(-1), -b[0]));
    return new BoxSides(2 * (wide + deep), heated);
  }

  private static Vec3 largest(Exposure exposure, Vec3 axis) {
    Vec3 best = axis.anyPerpendicular();
    double most = 0;
    for (CoveredPatch p : exposure.patches()) {
      Plane q = p.patch().plane();
      Vec3 n = new Vec3(q.nx(), q.ny(), q.nz());
      if (p.use() == CoveredPatch.Use.SIDE
          && Math.abs(n.dot(axis)) < 0.1
          && p.patch().area() > most * (1 + 1e-9)) {
        most = p.patch().area();
        best = n.minus(axis.times(n.dot(axis))).unit();
      }
    }
    return best;
  }

  private static double[] extent(Exposure exposure, Vec3 d) {
    Axis along = Axis.along(d, exposure.form().boundary());
    return new double[] {along.low(), along.high()};
  }

  /** Share of the faces on one side of the box that is exposed; one where no face lies there. */
  private static double open(Exposure exposure, Vec3 outward, double at) {
    double whole = 0;
    double rest = 0;
    for (CoveredPatch p : exposure.patches()) {
      Plane q = p.patch().plane();
      double cos = q.along(outward);
      if (p.use() == CoveredPatch.Use.SIDE
          && cos > ALIGNED
          && Math.abs(q.offset() / cos - at) < ON_SIDE + 1e-3 * Math.abs(at)) {
        whole += p.patch().area();
        rest += p.restArea();
      }
    }
    return whole > 0 ? rest / whole : 1;
  }
}
