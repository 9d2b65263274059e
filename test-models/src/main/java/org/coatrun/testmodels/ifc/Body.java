package org.coatrun.testmodels.ifc;

import java.util.List;
import org.coatrun.testmodels.step.Ref;

/**
 * The items of a body and the word that IFC has for their kind.
 *
 * @param type such as {@code SweptSolid} or {@code Clipping}
 */
public record Body(String type, List<Ref> items) {
  public Body {
    items = List.copyOf(items);
  }

  /** A body of one item. */
  public static Body of(String type, Ref item) {
    return new Body(type, List.of(item));
  }
}
