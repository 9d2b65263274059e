package org.coatrun.geometry.view;

import org.coatrun.geometry.exposure.CoveredPatch;
import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.exposure.Form;
import org.coatrun.geometry.solid.Patch;

/**
 * The surface of a form in triangles, in its own axes.
 *
 * @param points x, y, z of each corner, metres
 * @param corners three numbers of corners a triangle
 * @param coated one a triangle: whether it must be coated if the element must be
 */
public record Triangles(double[] points, int[] corners, boolean[] coated) {

  /** A form that was measured: what is covered is told from what is exposed. */
  public static Triangles of(Exposure exposure) {
    TriangleList list = new TriangleList();
    for (CoveredPatch p : exposure.patches()) {
      boolean side = p.use() == CoveredPatch.Use.SIDE;
      if (!side || p.rest().isEmpty()) {
        list.add(p.patch().plane(), p.patch().convexParts(), false);
      } else {
        list.add(p.patch().plane(), p.rest().convexLeft(), true);
        if (p.restArea() < p.patch().area() * (1 - 1e-9)) {
          list.add(p.patch().plane(), p.rest().convexTaken(), false);
        }
      }
    }
    return list.all();
  }

  /** A form that only stands by. */
  public static Triangles of(Form form) {
    TriangleList list = new TriangleList();
    for (Patch p : form.boundary().patches()) {
      list.add(p.plane(), p.convexParts(), false);
    }
    return list.all();
  }
}
