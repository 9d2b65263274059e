package org.coatrun.geometry.floor;

import org.coatrun.geometry.solid.Boundary;
import org.coatrun.geometry.solid.Box;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Originals;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.geometry.solid.Plane;
import org.coatrun.shared.model.Element;
import org.locationtech.jts.geom.CoordinateFilter;
import org.locationtech.jts.geom.Geometry;

/** A body ready to be cut level, its openings taken out. For one thread. */
final class Cut {

  private static final Plane LEVEL = Plane.through(0, 0, 0, 0, 0, 1);

  private final Element element;
  private final Originals originals;
  private final Kernel kernel;

  Cut(Element element, Originals originals, Kernel kernel) {
    this.element = element;
    this.originals = originals;
    this.kernel = kernel;
  }

  Element element() {
    return element;
  }

  Box box() {
    return originals.bounds();
  }

  /** What the body fills just under a height; empty for a body whose faces do not close. */
  Geometry at(double z) {
    Box b = box();
    if (z <= b.minZ() || z > b.maxZ()) {
      return Plan.EMPTY;
    }
    Plane plane = LEVEL.moved(z);
    double margin = 1;
    double[] u = {plane.u(b.minX(), b.minY(), z), plane.u(b.maxX(), b.maxY(), z)};
    double[] v = {plane.v(b.minX(), b.minY(), z), plane.v(b.maxX(), b.maxY(), z)};
    double[] window = {
      Math.min(u[0], u[1]) - margin,
      Math.min(v[0], v[1]) - margin,
      Math.max(u[0], u[1]) + margin,
      Math.max(v[0], v[1]) + margin
    };
    return world(originals.fill(kernel, plane, -1, b.grown(margin), window));
  }

  Boundary boundary() {
    return Boundary.of(originals, kernel);
  }

  boolean closed() {
    return originals.closed();
  }

  /** A patch of the surface seen from above. */
  static Geometry shadow(Patch patch) {
    return world(patch.onto(LEVEL));
  }

  private static Geometry world(Geometry inPlane) {
    Geometry copy = inPlane.copy();
    copy.apply(
        (CoordinateFilter)
            c -> {
              double x = LEVEL.x(c.x, c.y);
              double y = LEVEL.y(c.x, c.y);
              c.x = x;
              c.y = y;
            });
    copy.geometryChanged();
    return Plan.onGrain(copy);
  }
}
