package org.coatrun.shared.rules;

import java.util.List;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;

/**
 * How much material a coat holds: by area and thickness, and by its true offset.
 *
 * <p>A board foot is one square foot by one inch. The offset of a contour of length P by t covers P
 * t plus, at each convex corner that turns by a, a sector of a/2 t2, and less, at each concave
 * corner that turns by a, what two strips share: tan(a/2) t2 (Steiner's formula for parallel
 * bodies). A root fillet whose radius is at least t saves a/2 t2 in place of tan(a/2) t2.
 */
public final class CoatVolume {

  private CoatVolume() {}

  /** Area by thickness: what the trade counts in board feet. */
  public static Volume byArea(Area coated, Length thickness) {
    return coated.times(thickness);
  }

  /**
   * The factor k of t2 in the area of an offset contour, P t + k t2.
   *
   * @param turns the turn at each corner in radians, positive where the steel is convex; a fillet
   *     counts as no corner here
   */
  public static double cornerFactor(List<Double> turns) {
    return turns.stream().mapToDouble(turn -> turn >= 0 ? turn / 2 : -Math.tan(-turn / 2)).sum();
  }

  /** k of a W-shape with sharp corners, all round: eight convex and four concave right angles. */
  public static double cornerFactorFourSided() {
    return 8 * Math.PI / 4 - 4;
  }

  /** k of a W-shape under a deck: six convex and four concave right angles are left. */
  public static double cornerFactorThreeSided() {
    return 6 * Math.PI / 4 - 4;
  }

  /** k of a closed convex contour such as a tube or pipe: pi, whatever its corners. */
  public static double cornerFactorConvex() {
    return Math.PI;
  }

  /**
   * The area between a contour and its offset: P t + k t2, never under zero. Exact while the coats
   * of facing flanges do not meet.
   */
  public static Area offset(Length contour, double cornerFactor, Length thickness) {
    double t = thickness.metres();
    return Area.ofSquareMetres(Math.max(0, contour.metres() * t + cornerFactor * t * t));
  }
}
