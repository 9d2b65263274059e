package org.coatrun.shared.model;

import java.util.List;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;

/** A body held in memory. */
record KnownBody(boolean isPresent, Transform3 placement, Shape shape) implements Body {

  static final KnownBody NONE =
      new KnownBody(false, Transform3.IDENTITY, new Shape.Compound(List.of()));
}
