package org.coatrun.geometry.view;

import java.util.List;
import org.coatrun.geometry.exposure.CoveredPatch;
import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.exposure.Form;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Patch;
import org.locationtech.jts.geom.Geometry;

/**
 * The surface of a form in triangles, in its own axes.
 *
 * @param points x, y, z of three corners a triangle, metres
 * @param coated one a triangle: whether it must be coated if the element must be
 */
public record Triangles(double[] points, boolean[] coated) {

  /** A form that was measured: what is covered is told from what is exposed. */
  public static Triangles of(Exposure exposure, Kernel kernel, Repeats repeats) {
    TriangleList list = new TriangleList(repeats);
    for (CoveredPatch p : exposure.patches()) {
      boolean side = p.use() == CoveredPatch.Use.SIDE;
      list.add(p.patch().plane(), p.rest(), side);
      if (p.restArea() < p.patch().area() * (1 - 1e-9)) {
        covered(p, kernel, repeats).forEach(region -> list.add(p.patch().plane(), region, false));
      }
    }
    return list.all();
  }

  /** From what lies on it or from what is left, whichever is fewer pieces. */
  private static List<Geometry> covered(CoveredPatch p, Kernel kernel, Repeats repeats) {
    int shades = p.shades().size();
    return shades > 0 && shades < p.rest().getNumGeometries()
        ? p.shades()
        : List.of(repeats.covered(p.patch().region(), p.rest(), kernel));
  }

  /** A form that only stands by. */
  public static Triangles of(Form form, Repeats repeats) {
    TriangleList list = new TriangleList(repeats);
    for (Patch p : form.boundary().patches()) {
      list.add(p.plane(), p.region(), false);
    }
    return list.all();
  }
}
