package org.coatrun.geometry.view;

import java.util.List;
import org.coatrun.geometry.exposure.CoveredPatch;
import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.exposure.Form;
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
  public static Triangles of(Exposure exposure) {
    TriangleList list = new TriangleList();
    for (CoveredPatch p : exposure.patches()) {
      boolean side = p.use() == CoveredPatch.Use.SIDE;
      list.add(p.patch().plane(), side ? p.rest() : p.patch().region(), side);
      if (side && p.restArea() < p.patch().area() * (1 - 1e-9)) {
        covered(p).forEach(region -> list.add(p.patch().plane(), region, false));
      }
    }
    return list.all();
  }

  private static List<Geometry> covered(CoveredPatch p) {
    return p.rest().isEmpty() ? List.of(p.patch().region()) : p.shades();
  }

  /** A form that only stands by. */
  public static Triangles of(Form form) {
    TriangleList list = new TriangleList();
    for (Patch p : form.boundary().patches()) {
      list.add(p.plane(), p.region(), false);
    }
    return list.all();
  }
}
