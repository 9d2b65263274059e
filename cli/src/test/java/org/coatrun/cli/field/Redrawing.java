package org.coatrun.cli.field;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coatrun.cli.field.SectionTable.Row;
import org.coatrun.geometry.profile.OutlineResult;
import org.coatrun.geometry.profile.Outlines;
import org.coatrun.geometry.profile.SectionOutline;
import org.coatrun.shared.shape.Profile;

/**
 * A section of the library drawn again with what its table says where the library says otherwise.
 *
 * @param why what the library has otherwise
 * @param contour what the table's perimeter is taken along
 * @param steel what the table's area is taken of
 */
record Redrawing(Cause why, Profile contour, Profile steel) {

  private static final double INCH = 0.0254;
  private static final OptionalDouble NO = OptionalDouble.empty();

  /** Flanges of American beams and channels slope by 1 in 6 (ASTM A6). */
  private static final double SLOPE = Math.atan(1 / 6.0);

  /** Why a section of the library measures otherwise than the table. */
  enum Cause {
    /** It does not: both are within a hundredth as the library draws it. */
    NONE,
    /** The library draws the nominal wall; the table's area is of the design wall. */
    NOMINAL_WALL,
    /**
     * The library draws tees with the root radius of the detailing k, along which the table takes
     * its perimeter too; its area goes by kdes.
     */
    DETAILING_ROOT,
    /**
     * Root radius by the table's k, which is rounded up: the radius that follows from the table's
     * own area gives its perimeter too.
     */
    ROUNDED_ROOT,
    /**
     * The library rounds the toes of angles by two thirds of t; the table's perimeter is that of
     * square legs, and its area leaves the toes square and the root no rounder than its k.
     */
    SQUARE_LEGS,
    /** The library leaves out the root radius of double angles, which is no larger than k. */
    NO_ROOT,
    /** The library draws tees cut from S-shapes without the slope of their flanges. */
    NO_SLOPE,
    /**
     * The table's perimeter of channels is taken along parallel flanges, its area with the true
     * slope and radii; the library's root radius is larger than that.
     */
    CHANNEL_CONTOUR
  }

  static double perimeter(Profile profile) {
    return outline(profile).outerPerimeter() / INCH;
  }

  static double area(Profile profile) {
    return outline(profile).area() / (INCH * INCH);
  }

  private static SectionOutline outline(Profile profile) {
    return ((OutlineResult.Drawn) Outlines.of(profile)).outline();
  }

  boolean agreesWith(Row row) {
    return agrees(contour, steel, row);
  }

  static boolean agrees(Profile contour, Profile steel, Row row) {
    return (!row.has("PB") || near(perimeter(contour), row.value("PB"), 0.01))
        && near(area(steel), row.value("A"), 0.01);
  }

  static boolean near(double value, double reference, double share) {
    return Math.abs(value / reference - 1) <= share;
  }

  /** The section by what the table says, or nothing where the library says the same. */
  static Optional<Redrawing> of(Row row, Profile drawn, SectionTable table) {
    return switch (row.type()) {
      case "HSS", "PIPE" -> Optional.of(alike(Cause.NOMINAL_WALL, designWall(row, drawn)));
      case "WT" ->
          Optional.of(new Redrawing(Cause.DETAILING_ROOT, drawn, tee(row, row.root(), NO, 0)));
      case "M", "HP" -> Optional.of(alike(Cause.ROUNDED_ROOT, i(row, rootByArea(row))));
      case "MT" -> Optional.of(alike(Cause.ROUNDED_ROOT, tee(row, rootOfWhole(row, table), NO, 0)));
      case "L" -> Optional.of(squareLegs(row));
      case "2L" -> Optional.of(alike(Cause.NO_ROOT, rootedPair(row, drawn, table)));
      case "ST" -> Optional.of(alike(Cause.NO_SLOPE, sloped(row, table)));
      case "C", "MC" -> Optional.of(channel(row, table));
      default -> Optional.empty();
    };
  }

  private static Redrawing alike(Cause why, Profile both) {
    return new Redrawing(why, both, both);
  }

  private static Profile designWall(Row row, Profile drawn) {
    double wall = row.value("tdes");
    if (drawn instanceof Profile.RectangleHollow p) {
      return new Profile.RectangleHollow(
          "", p.width(), p.depth(), wall * INCH, some(wall), some(2 * wall));
    }
    return new Profile.CircleHollow("", row.value("OD") / 2 * INCH, wall * INCH);
  }

  static Profile i(Row row, double root) {
    return new Profile.IShape(
        "", in(row, "bf"), in(row, "d"), in(row, "tw"), in(row, "tf"), some(root), NO, NO);
  }

  private static Profile tee(Row row, double root, OptionalDouble toe, double slope) {
    return new Profile.TShape(
        "",
        in(row, "d"),
        in(row, "bf"),
        in(row, "tw"),
        in(row, "tf"),
        some(root),
        toe,
        NO,
        NO,
        OptionalDouble.of(slope));
  }

  private static double rootByArea(Row row) {
    return rootFor(row.value("A"), i(row, 0), 4);
  }

  /**
   * The radius of root fillets that make up an area; a fillet in a square corner fills r2(1-pi/4).
   */
  private static double rootFor(double area, Profile sharp, int fillets) {
    return Math.sqrt(Math.max(0, area - area(sharp)) / (fillets * (1 - Math.PI / 4)));
  }

  /** Tees of M-shapes are half of one: twice as deep and as heavy. */
  private static double rootOfWhole(Row row, SectionTable table) {
    return table.of("M").stream()
        .filter(m -> near(m.value("d"), 2 * row.value("d"), 0.01))
        .filter(m -> m.value("bf") == row.value("bf") && m.value("tw") == row.value("tw"))
        .mapToDouble(Redrawing::rootByArea)
        .findFirst()
        .orElseThrow();
  }

  private static Redrawing squareLegs(Row row) {
    double root = Math.min(row.root(), rootFor(row.value("A"), angle(row, 0), 1));
    return new Redrawing(Cause.SQUARE_LEGS, angle(row, 0), angle(row, root));
  }

  private static Profile rootedPair(Row row, Profile drawn, SectionTable table) {
    double root = Math.min(table.singleOf(row).root(), rootFor(row.value("A"), drawn, 2));
    return rooted(drawn, root);
  }

  private static Profile angle(Row row, double root) {
    return new Profile.LShape("", in(row, "d"), in(row, "b"), in(row, "t"), some(root), NO, NO);
  }

  private static Profile rooted(Profile drawn, double root) {
    if (drawn instanceof Profile.Composite c) {
      List<Profile> parts = c.parts().stream().map(p -> rooted(p, root)).toList();
      return new Profile.Composite("", parts);
    }
    if (drawn instanceof Profile.Placed p) {
      return new Profile.Placed("", p.by(), rooted(p.of(), root));
    }
    var l = (Profile.LShape) drawn;
    return new Profile.LShape("", l.depth(), l.width(), l.thickness(), some(root), NO, NO);
  }

  /**
   * Root and toe radius of American standard shapes, from memory: the lightest web of the rolls and
   * a tenth of an inch more; six tenths of that web.
   */
  private static Profile sloped(Row row, SectionTable table) {
    double web = table.lightestWeb(row);
    return tee(row, web + 0.1, some(0.6 * web), SLOPE);
  }

  private static Redrawing channel(Row row, SectionTable table) {
    double web = table.lightestWeb(row);
    return new Redrawing(
        Cause.CHANNEL_CONTOUR,
        channel(row, row.root(), NO, 0),
        channel(row, web + 0.1, some(0.6 * web), SLOPE));
  }

  private static Profile channel(Row row, double root, OptionalDouble toe, double slope) {
    return new Profile.UShape(
        "",
        in(row, "d"),
        in(row, "bf"),
        in(row, "tw"),
        in(row, "tf"),
        some(root),
        toe,
        OptionalDouble.of(slope));
  }

  private static double in(Row row, String column) {
    return row.value(column) * INCH;
  }

  private static OptionalDouble some(double inches) {
    return OptionalDouble.of(inches * INCH);
  }
}
