package org.coatrun.geometry.view;

import org.coatrun.geometry.exposure.CoveredPatch;
import org.coatrun.geometry.exposure.Exposure;
import org.coatrun.geometry.exposure.Thing;
import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Patch;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.shape.Transform3;

/**
 * The surface of one element in triangles, in world axes.
 *
 * @param frame rigid frame of the element: like elements look alike in their own frames
 * @param points x, y, z of three corners a triangle, metres
 * @param coated one a triangle: whether it must be coated if the element must be
 */
public record ElementMesh(ElementId id, Transform3 frame, double[] points, boolean[] coated) {

  public ElementMesh {
    if (points.length != 9 * coated.length) {
      throw new IllegalArgumentException("a mesh whose lists do not match");
    }
  }

  /** An element that was measured: what is covered is told from what is exposed. */
  public static ElementMesh of(Element element, Exposure exposure, Kernel kernel) {
    TriangleList list = new TriangleList();
    for (CoveredPatch p : exposure.patches()) {
      boolean side = p.use() == CoveredPatch.Use.SIDE;
      list.add(p.patch().plane(), p.rest(), side);
      if (p.restArea() < p.patch().area() * (1 - 1e-9)) {
        list.add(
            p.patch().plane(), kernel.overlay().lessInPieces(p.patch().region(), p.rest()), false);
      }
    }
    return new ElementMesh(element.id(), frame(element), list.points(), list.coated());
  }

  /** An element that only stands by. */
  public static ElementMesh of(Element element, Thing thing) {
    TriangleList list = new TriangleList();
    for (Patch p : thing.boundary().patches()) {
      list.add(p.plane(), p.region(), false);
    }
    return new ElementMesh(element.id(), frame(element), list.points(), list.coated());
  }

  private static Transform3 frame(Element element) {
    Transform3 f = element.body().placement();
    return f.isRigid() && f.determinant() > 0 ? f : Transform3.translation(f.origin());
  }
}
