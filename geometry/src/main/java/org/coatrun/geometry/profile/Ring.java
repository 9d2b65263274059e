package org.coatrun.geometry.profile;

import java.util.ArrayList;
import java.util.List;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Transform2;

/**
 * A closed curve: pieces that follow each other, the last one ending where the first begins.
 *
 * @param pieces at least one, none without length
 */
public record Ring(List<Segment2> pieces) {

  public Ring {
    pieces = List.copyOf(pieces);
    if (pieces.isEmpty()) {
      throw new IllegalArgumentException("a ring without a piece");
    }
  }

  /** Length all round, in metres. */
  public double length() {
    return pieces.stream().mapToDouble(Pieces::length).sum();
  }

  /** Area inside in m²; positive where the ring runs counter-clockwise. */
  public double area() {
    var about = Pieces.start(pieces.get(0));
    return pieces.stream().mapToDouble(p -> Pieces.areaTerm(p, about)).sum();
  }

  /** The smallest rectangle along the axes that holds the ring. */
  public Rectangle2 bounds() {
    var extent = new Extent();
    pieces.forEach(extent::add);
    return extent.rectangle();
  }

  /** The same ring the other way round. */
  public Ring reversed() {
    var out = new ArrayList<Segment2>();
    for (int i = pieces.size() - 1; i >= 0; i--) {
      out.add(Pieces.reversed(pieces.get(i)));
    }
    return new Ring(out);
  }

  /** The same ring, counter-clockwise or clockwise as asked. */
  public Ring turned(boolean counterClockwise) {
    return area() > 0 == counterClockwise ? this : reversed();
  }

  /** The ring mapped; a reflection turns its direction round. */
  public Ring map(Transform2 by) {
    return new Ring(pieces.stream().map(p -> p.map(by)).toList());
  }
}
