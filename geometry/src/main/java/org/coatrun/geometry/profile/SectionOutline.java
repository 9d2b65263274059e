package org.coatrun.geometry.profile;

import java.util.List;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Transform2;
import org.coatrun.shared.surface.SectionMeasure.Basis;

/**
 * The outline of a whole section: one region, or several that act as one.
 *
 * @param regions at least one; they may touch but are taken not to overlap
 * @param basis how its contour treats fillets
 */
public record SectionOutline(List<Region> regions, Basis basis) {

  private static final double ON_SIDE = 1e-9;

  public SectionOutline {
    regions = List.copyOf(regions);
    if (regions.isEmpty()) {
      throw new IllegalArgumentException("an outline without a region");
    }
  }

  /** A section of one region. */
  public static SectionOutline of(Region region, Basis basis) {
    return new SectionOutline(List.of(region), basis);
  }

  /** Area of the steel in m². */
  public double area() {
    return regions.stream().mapToDouble(Region::area).sum();
  }

  /** Length of the outer rings in m, less twice what straight sides of two regions share. */
  public double outerPerimeter() {
    return regions.stream().mapToDouble(r -> r.outer().length()).sum() - 2 * sharedLength();
  }

  /** Length of the holes' rings in m: the contour inside of hollow sections. */
  public double innerPerimeter() {
    return regions.stream().flatMap(r -> r.holes().stream()).mapToDouble(Ring::length).sum();
  }

  /** Length along which straight sides of two regions lie on each other, in m. */
  public double sharedLength() {
    return regions.size() < 2 ? 0 : Contact.between(regions);
  }

  /** The smallest rectangle along the axes about all regions. */
  public Rectangle2 bounds() {
    return regions.stream().map(r -> r.outer().bounds()).reduce(Rectangle2::plus).orElseThrow();
  }

  /**
   * Length of the straight pieces that lie on a side of the bounding box, in m: what a deck on that
   * side covers, so that the outer perimeter less this is the contour on three sides.
   */
  public double flatOn(Side side) {
    Rectangle2 box = bounds();
    double tolerance = ON_SIDE * box.diagonal();
    return regions.stream()
        .flatMap(r -> r.outer().pieces().stream())
        .filter(p -> p instanceof Segment2.Line l && liesOn(l, side, box, tolerance))
        .mapToDouble(Pieces::length)
        .sum();
  }

  /** Perimeter of the box less the side's length: a box on three sides. */
  public double boxWithout(Side side) {
    Rectangle2 box = bounds();
    boolean across = side == Side.TOP || side == Side.BOTTOM;
    return box.perimeter() - (across ? box.width() : box.height());
  }

  /** The outline mapped by any affine map that does not flatten it. */
  public SectionOutline map(Transform2 by) {
    return new SectionOutline(regions.stream().map(r -> r.map(by)).toList(), basis);
  }

  private static boolean liesOn(Segment2.Line l, Side side, Rectangle2 box, double tolerance) {
    double at =
        switch (side) {
          case LEFT -> Math.max(l.from().x(), l.to().x()) - box.minX();
          case RIGHT -> box.maxX() - Math.min(l.from().x(), l.to().x());
          case BOTTOM -> Math.max(l.from().y(), l.to().y()) - box.minY();
          case TOP -> box.maxY() - Math.min(l.from().y(), l.to().y());
        };
    return at <= tolerance;
  }
}
