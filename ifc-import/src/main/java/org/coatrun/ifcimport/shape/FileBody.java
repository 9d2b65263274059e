package org.coatrun.ifcimport.shape;

import java.util.Optional;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;

/**
 * A body that is read from its file each time it is asked for; only whether it is there is
 * remembered. Safe for several threads: each finds the same answer.
 */
final class FileBody implements Body {

  private final Shapes shapes;
  private final long placementId;
  private final long shapeId;

  /** Null until it was asked. */
  private volatile Boolean present;

  FileBody(Shapes shapes, long placementId, long shapeId) {
    this.shapes = shapes;
    this.placementId = placementId;
    this.shapeId = shapeId;
  }

  @Override
  public boolean isPresent() {
    Boolean known = present;
    if (known == null) {
      known = shapes.hasBody(shapeId);
      present = known;
    }
    return known;
  }

  @Override
  public Transform3 placement() {
    return shapes.placement(placementId);
  }

  @Override
  public Optional<Object> likeness() {
    return shapes.likeness(placementId, shapeId);
  }

  @Override
  public Shape shape() {
    return shapes.shape(placementId, shapeId);
  }
}
