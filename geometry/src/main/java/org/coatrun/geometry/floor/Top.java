package org.coatrun.geometry.floor;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.model.Element;
import org.locationtech.jts.geom.Geometry;

/**
 * A level part of the top of something that may carry a person.
 *
 * @param z its height
 * @param under underside of the body
 * @param region seen from above
 * @param from the element; empty where it was assumed
 */
record Top(Kind kind, double z, double under, Geometry region, Optional<Element> from) {

  /** What carries. */
  enum Kind {
    /** A slab, or deck with its concrete. */
    SLAB,
    /** Deck without concrete in the model. */
    BARE_DECK,
    /** Concrete that lies on deck and is drawn by itself. */
    FILL,
    /** Nothing in the model: derived from the steel. */
    ASSUMED
  }

  double area() {
    return region.getArea();
  }

  static double area(List<Top> tops) {
    return tops.stream().mapToDouble(Top::area).sum();
  }
}
