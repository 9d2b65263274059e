package org.coatrun.shared.model;

import java.util.Optional;
import org.coatrun.shared.shape.Shape;
import org.coatrun.shared.shape.Transform3;

/**
 * The body of an element, decoded when asked for, so that a large model need not be held at once.
 *
 * <p>Openings are not taken out of the shape: they are elements of their own. Implementations may
 * be called from several threads.
 */
public interface Body {

  /** Whether the model gives a body at all; where not, {@link #shape()} is an empty compound. */
  boolean isPresent();

  /** From the shape's axes to world axes about {@link Building#origin()}; metres. */
  Transform3 placement();

  /** The shape in its own axes. Kinds that are not handled appear inside as Unsupported. */
  Shape shape();

  /**
   * Something that is equal only for bodies whose shapes are equal, found without decoding them;
   * empty where there is no such thing.
   */
  default Optional<Object> likeness() {
    return Optional.empty();
  }

  /** A body known in full. */
  static Body of(Transform3 placement, Shape shape) {
    return new KnownBody(true, placement, shape);
  }

  /** No body. */
  static Body none() {
    return KnownBody.NONE;
  }
}
