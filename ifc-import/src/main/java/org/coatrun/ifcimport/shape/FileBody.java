package org.coatrun.ifcimport.shape;

import org.coatrun.shared.model.Body;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;

/** A body that is read from its file each time it is asked for. */
record FileBody(Shapes shapes, long placementId, long shapeId) implements Body {

  @Override
  public boolean isPresent() {
    return shapes.hasBody(shapeId);
  }

  @Override
  public Transform3 placement() {
    return shapes.placement(placementId);
  }

  @Override
  public Shape shape() {
    return shapes.shape(placementId, shapeId);
  }
}
