package org.coatrun.geometry.section;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * The contour, or its exposed part, where a plane cuts across a member: straight pieces with the
 * steel on their left, in the plane's own axes.
 *
 * @param pieces in the order of the member's patches
 */
record Trace(List<Piece> pieces) {

  /**
   * One straight piece.
   *
   * @param length from end to end
   * @param stretch arc over chord, for a piece that stands for an arc
   */
  record Piece(Coordinate from, Coordinate to, double length, double stretch) {

    static Piece of(Coordinate from, Coordinate to, double stretch) {
      return new Piece(from, to, from.distance(to), stretch);
    }

    double du() {
      return (to.x - from.x) / length;
    }

    double dv() {
      return (to.y - from.y) / length;
    }
  }

  /** Length of all chords, m. */
  double chords() {
    double sum = 0;
    for (Piece piece : pieces) {
      sum += piece.length();
    }
    return sum;
  }

  /** Length of the contour, arcs at their true length, m. */
  double length() {
    double sum = 0;
    for (Piece piece : pieces) {
      sum += piece.length() * piece.stretch();
    }
    return sum;
  }
}
