package org.coatrun.geometry.exposure;

import org.coatrun.shared.finding.SurfaceFinding;

/** A shape that cannot be made into a tree; never leaves the package. */
final class NoTreeException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final SurfaceFinding code;
  private final String kind;

  NoTreeException(SurfaceFinding code, String kind, String sentence) {
    super(sentence);
    this.code = code;
    this.kind = kind;
  }

  BodyTree.Result.Failed failed() {
    return new BodyTree.Result.Failed(code, kind, getMessage());
  }
}
