package org.coatrun.geometry.profile;

import java.util.List;
import org.coatrun.shared.shape.Transform2;

/**
 * One connected part of a section.
 *
 * @param outer counter-clockwise
 * @param holes clockwise
 */
public record Region(Ring outer, List<Ring> holes) {

  /** Turns the rings the way they should run. */
  public Region {
    outer = outer.turned(true);
    holes = holes.stream().map(h -> h.turned(false)).toList();
  }

  /** Area between outer ring and holes, in m². */
  public double area() {
    return outer.area() + holes.stream().mapToDouble(Ring::area).sum();
  }

  /** The region mapped by any affine map that does not flatten it. */
  public Region map(Transform2 by) {
    return new Region(outer.map(by), holes.stream().map(h -> h.map(by)).toList());
  }
}
