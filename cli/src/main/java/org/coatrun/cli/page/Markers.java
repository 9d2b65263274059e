package org.coatrun.cli.page;

import org.coatrun.shared.model.Element;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** Signs for elements that cannot be drawn, at the place that the model gives them. */
final class Markers {

  private static final double SIZE_M = 0.3;
  private static final int[] CORNERS = {
    0, 2, 4, 2, 1, 4, 1, 3, 4, 3, 0, 4, 2, 0, 5, 1, 2, 5, 3, 1, 5, 0, 3, 5
  };

  private Markers() {}

  /** An eight-sided sign at the origin of an element's placement. */
  static PageBody at(Element element) {
    Vec3 at = element.body().placement().origin();
    double[] points = new double[18];
    for (int v = 0; v < 6; v++) {
      double side = v % 2 == 0 ? SIZE_M : -SIZE_M;
      points[3 * v + v / 2] = side;
    }
    return PageBody.of(
        Transform3.translation(at), new PageMesh(points, CORNERS.clone(), new byte[8]));
  }
}
