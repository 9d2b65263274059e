package org.coatrun.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/** What others left of a region, and what they took. Immutable. */
public final class Remainder {

  private final boolean whole;
  private final List<Piece> left;
  private final List<Piece> taken;

  Remainder(boolean whole, List<Piece> left, List<Piece> taken) {
    this.whole = whole;
    this.left = List.copyOf(left);
    this.taken = List.copyOf(taken);
  }

  /** Whether nothing was taken. */
  public boolean isWhole() {
    return whole;
  }

  /** Whether nothing is left. */
  public boolean isEmpty() {
    return left.isEmpty();
  }

  /** What is left. */
  public Geometry region() {
    return Overlay.gathered(left.stream().map(Piece::polygon).toList());
  }

  /** What was taken, side by side. */
  public List<Geometry> taken() {
    return taken.stream().<Geometry>map(Piece::polygon).toList();
  }

  /**
   * The rings about what is left, of u and v in turn, the first corner not repeated: outlines
   * counter-clockwise, holes clockwise.
   */
  public List<double[]> rings() {
    List<double[]> rings = new ArrayList<>(left.size());
    left.forEach(piece -> piece.outline(rings));
    return rings;
  }

  /** What is left as convex rings side by side. */
  public List<double[]> convexLeft() {
    return convex(left);
  }

  /** What was taken as convex rings side by side. */
  public List<double[]> convexTaken() {
    return convex(taken);
  }

  private static List<double[]> convex(List<Piece> pieces) {
    List<double[]> rings = new ArrayList<>(pieces.size());
    pieces.forEach(piece -> piece.convex(rings));
    return rings;
  }
}
