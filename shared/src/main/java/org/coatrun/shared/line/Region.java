package org.coatrun.shared.line;

import java.util.List;
import org.coatrun.shared.shape.Vec2;

/**
 * A piece of a floor plane: an outline and the holes in it, in metres.
 *
 * <p>Rings run in either direction and do not repeat their first point. Holes lie inside the
 * outline. Nothing is said about rings that cross themselves; who computes with a region mends
 * them.
 *
 * @param outline at least three finite points
 * @param holes each at least three finite points
 */
public record Region(List<Vec2> outline, List<List<Vec2>> holes) {

  public Region {
    outline = List.copyOf(outline);
    holes = holes.stream().map(List::copyOf).toList();
    check(outline);
    holes.forEach(Region::check);
  }

  /** A region without holes. */
  public static Region of(Vec2... outline) {
    return new Region(List.of(outline), List.of());
  }

  /** The rectangle between two opposite corners, sides along the axes. */
  public static Region rectangle(double x0, double y0, double x1, double y1) {
    return of(new Vec2(x0, y0), new Vec2(x1, y0), new Vec2(x1, y1), new Vec2(x0, y1));
  }

  /** The area of the outline less that of the holes, in m². */
  public double area() {
    return ringArea(outline) - holes.stream().mapToDouble(Region::ringArea).sum();
  }

  /** Whether the point lies inside by the even-odd rule; on an edge, either answer. */
  public boolean contains(Vec2 p) {
    boolean inside = crosses(outline, p);
    for (List<Vec2> hole : holes) {
      inside ^= crosses(hole, p);
    }
    return inside;
  }

  private static boolean crosses(List<Vec2> ring, Vec2 p) {
    boolean odd = false;
    Vec2 a = ring.get(ring.size() - 1);
    for (Vec2 b : ring) {
      if (a.y() > p.y() != b.y() > p.y()
          && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
        odd = !odd;
      }
      a = b;
    }
    return odd;
  }

  private static double ringArea(List<Vec2> ring) {
    double twice = 0;
    Vec2 a = ring.get(ring.size() - 1);
    for (Vec2 b : ring) {
      twice += a.cross(b);
      a = b;
    }
    return Math.abs(twice) / 2;
  }

  private static void check(List<Vec2> ring) {
    if (ring.size() < 3) {
      throw new IllegalArgumentException("a ring of " + ring.size() + " points");
    }
    for (Vec2 p : ring) {
      if (!Double.isFinite(p.x()) || !Double.isFinite(p.y())) {
        throw new IllegalArgumentException("a ring with a point that is not finite: " + p);
      }
    }
  }
}
