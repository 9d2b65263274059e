package org.coatrun.cli.page;

import org.coatrun.geometry.view.Facets;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.shape.Transform3;
import org.coatrun.shared.shape.Vec3;

/** Signs for elements that cannot be drawn, at the place that the model gives them. */
final class Markers {

  private static final float SIZE_M = 0.3F;
  private static final int[] CORNERS = {
    0, 2, 4, 2, 1, 4, 1, 3, 4, 3, 0, 4, 2, 0, 5, 1, 2, 5, 3, 1, 5, 0, 3, 5
  };
  private static final int[] SIZES = {3, 3, 3, 3, 3, 3, 3, 3};
  private static final boolean[] EXPOSED = {true, true, true, true, true, true, true, true};

  private Markers() {}

  /** An eight-sided sign at the origin of an element's placement. */
  static PageBody at(Element element) {
    Vec3 at = element.body().placement().origin();
    float[] points = new float[3 * CORNERS.length];
    for (int c = 0; c < CORNERS.length; c++) {
      int v = CORNERS[c];
      points[3 * c + v / 2] = v % 2 == 0 ? SIZE_M : -SIZE_M;
    }
    return PageBody.of(Transform3.translation(at), new Facets(points, SIZES, EXPOSED));
  }
}
