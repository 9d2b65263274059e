package org.coatrun.geometry.view;

import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

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

  /** The triangles of an element's form, where the form stands. */
  public static ElementMesh of(Element element, Triangles form, Vec3 at) {
    double[] points = form.points().clone();
    for (int i = 0; i < points.length; i += 3) {
      points[i] += at.x();
      points[i + 1] += at.y();
      points[i + 2] += at.z();
    }
    return new ElementMesh(element.id(), frame(element), points, form.coated());
  }

  private static Transform3 frame(Element element) {
    Transform3 f = element.body().placement();
    return f.isRigid() && f.determinant() > 0 ? f : Transform3.translation(f.origin());
  }
}
