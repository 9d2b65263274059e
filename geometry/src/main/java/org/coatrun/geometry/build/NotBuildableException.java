package org.coatrun.geometry.build;

import org.coatrun.shared.finding.SurfaceFinding;
import org.coatrun.shared.shape.Shape;

/** A shape that cannot be made into solids; never leaves the package. */
final class NotBuildableException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final SurfaceFinding code;
  private final String kind;

  NotBuildableException(SurfaceFinding code, String kind, String sentence) {
    super(sentence);
    this.code = code;
    this.kind = kind;
  }

  static NotBuildableException notHandled(String kind) {
    return new NotBuildableException(
        SurfaceFinding.SHAPE_NOT_HANDLED, kind, "A body of kind " + kind + " is not handled.");
  }

  static NotBuildableException unsupported(Shape.Unsupported s) {
    return s.detail().isEmpty()
        ? notHandled(s.kind())
        : new NotBuildableException(
            SurfaceFinding.SHAPE_NOT_HANDLED,
            s.kind(),
            "The body cannot be read: " + s.detail() + ".");
  }

  static NotBuildableException empty(String kind) {
    return new NotBuildableException(
        SurfaceFinding.EMPTY_BODY, kind, "The " + kind + " has no surface.");
  }

  BuildResult.NotBuilt result() {
    return new BuildResult.NotBuilt(code, kind, getMessage());
  }
}
