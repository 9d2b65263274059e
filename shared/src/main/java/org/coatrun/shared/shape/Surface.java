package org.coatrun.shared.shape;

import java.util.List;

/** A surface that faces of an exact brep lie on, or that guides a sweep. */
public sealed interface Surface {

  /** The plane z = 0 of a frame. */
  record Plane(Transform3 frame) implements Surface {}

  /** All points at {@code radius} from the z axis of a frame. */
  record Cylinder(Transform3 frame, double radius) implements Surface {}

  /** All points at {@code radius} from the origin of a frame. */
  record Sphere(Transform3 frame, double radius) implements Surface {}

  /** A circle of {@code minor} radius carried round the z axis of a frame at {@code major}. */
  record Torus(Transform3 frame, double major, double minor) implements Surface {}

  /** A curve carried along a vector (its length counts). */
  record Swept(Curve3 curve, Vec3 along) implements Surface {}

  /** A curve carried round an axis. */
  record Revolved(Curve3 curve, Vec3 axisPoint, Vec3 axisDirection) implements Surface {}

  /**
   * A tensor-product B-spline.
   *
   * @param poles rows in u, each a row in v
   * @param weights same shape as the poles, or empty for an even spline
   * @param uKnots with repeats written out
   * @param vKnots with repeats written out
   */
  record Spline(
      int uDegree,
      int vDegree,
      List<List<Vec3>> poles,
      List<List<Double>> weights,
      List<Double> uKnots,
      List<Double> vKnots)
      implements Surface {}

  /** A surface that is not handled, by the name of its kind. */
  record Unsupported(String kind) implements Surface {}
}
