package org.coatrun.geometry.build;

import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;

/**
 * Makes solids of any shape.
 *
 * <p>Never throws for what a model may contain: what cannot be built comes back as a typed result.
 */
public final class ShapeBuilder {

  private ShapeBuilder() {}

  /**
   * The solids of a shape.
   *
   * @param at from the shape's axes to those asked for; any affine map that does not flatten space:
   *     areas are those of the mapped geometry
   */
  public static BuildResult build(Shape shape, Transform3 at) {
    try {
      return dispatch(shape, at);
    } catch (NotBuildableException e) {
      return e.result();
    } catch (IllegalArgumentException | ArithmeticException e) {
      return new BuildResult.NotBuilt(
          SurfaceFinding.NOT_MEASURED,
          shape.getClass().getSimpleName(),
          "A body could not be built: " + e.getMessage() + ".");
    }
  }

  static BuildResult.Built dispatch(Shape shape, Transform3 at) {
    if (shape instanceof Shape.Placed p) {
      return dispatch(p.of(), at.after(p.by()));
    }
    if (shape instanceof Shape.Extrusion s) {
      return Extrusions.build(s, at);
    }
    if (shape instanceof Shape.TaperedExtrusion s) {
      return Extrusions.build(s, at);
    }
    if (shape instanceof Shape.Unsupported s) {
      throw NotBuildableException.notHandled(s.kind());
    }
    throw NotBuildableException.notHandled(shape.getClass().getSimpleName());
  }
}
