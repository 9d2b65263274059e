package org.coatrun.geometry.surface;

import java.util.List;
import org.coatrun.shared.model.Body;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Element;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.shape.Transform3;

/**
 * All that decides the form of a body: bodies that are equal in it share one.
 *
 * @param shape the shape in its own axes, or what is equal only for equal ones
 * @param turned from those to the world's, about the origin of the form
 * @param openings what is taken out of it, in the order of their numbers
 */
record Likeness(Kind kind, Object shape, Transform3 turned, List<Hole> openings) {

  // Written out: see the conventions in DEVELOPERS.md.

  @Override
  public boolean equals(Object other) {
    return other instanceof Likeness o
        && kind == o.kind
        && shape.equals(o.shape)
        && turned.equals(o.turned)
        && openings.equals(o.openings);
  }

  @Override
  public int hashCode() {
    int hash = 31 * kind.hashCode() + shape.hashCode();
    return 31 * (31 * hash + turned.hashCode()) + openings.hashCode();
  }

  /** What a form is measured as. */
  enum Kind {
    /** Has an axis. */
    MEMBER,
    /** A member without one. */
    PLATE,
    /** Coated on its underside alone. */
    DECK,
    /** Only covers others. */
    OTHER;

    static Kind of(Element element) {
      if (element instanceof Member m) {
        return m.role() == Role.PLATE ? PLATE : MEMBER;
      }
      return element instanceof Deck ? DECK : OTHER;
    }
  }

  /** What a body's shape is told by. */
  static Object look(Body body) {
    return body.likeness().orElseGet(body::shape);
  }

  /**
   * An opening.
   *
   * @param placed from the shape's axes to those of the form
   */
  record Hole(Object shape, Transform3 placed) {}
}
