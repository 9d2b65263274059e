package org.coatrun.geometry.build;

import java.util.List;
import org.coatrun.shared.shape.Vec3;

/**
 * A curved surface unrolled: two coordinates in metres, of which the first may come round again.
 * Where u × v is the surface's own normal.
 */
interface FaceMap {

  /** The point of the surface at u, v. */
  Vec3 at(double u, double v);

  /**
   * u and v of the point of the surface nearest to {@code p}.
   *
   * @param near u and v of a point near by, to stay on its side of a seam; or null
   */
  double[] of(Vec3 p, double[] near);

  /** After how much u the surface comes round again; zero where it does not. */
  double period();

  /** Values of u where the surface is cut into strips, between two others. */
  List<Double> linesAcrossU(double from, double to);

  /** Values of v where strips are cut once more, between two others. */
  List<Double> linesAcrossV(double from, double to);

  /** Whether u and v measure true areas. */
  boolean unrolls();
}
