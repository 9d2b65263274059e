package org.coatrun.geometry.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.coatrun.geometry.profile.Drawing.NO;
import static org.coatrun.geometry.profile.Drawing.draw;
import static org.coatrun.geometry.profile.Drawing.some;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.coatrun.shared.shape.Curve2;
import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.shape.Segment2;
import org.coatrun.shared.shape.Transform2;
import org.coatrun.shared.shape.Vec2;
import org.junit.jupiter.api.Test;

/** Random profiles against fine facets (shoelace formula), and what maps must leave alone. */
class OutlineInvariantsTest {

  private static final int ROUNDS = 400;

  private final Random random = new Random(20260101);

  @Test
  void areaAndPerimeterAgreeWithFineFacets() {
    for (int i = 0; i < ROUNDS; i++) {
      SectionOutline outline = draw(profile());
      double area = 0;
      double length = 0;
      for (Region r : outline.regions()) {
        area += facetArea(r.outer());
        length += facetLength(r.outer());
        for (Ring hole : r.holes()) {
          area += facetArea(hole);
        }
      }
      assertThat(outline.area()).isCloseTo(area, withPercentage(1e-3));
      assertThat(outline.outerPerimeter()).isCloseTo(length, withPercentage(1e-3));
    }
  }

  @Test
  void rigidMapsAndReflectionsLeaveAreaAndPerimeter() {
    for (int i = 0; i < ROUNDS; i++) {
      Profile profile = profile();
      SectionOutline plain = draw(profile);
      double angle = random.nextDouble() * 7;
      Vec2 x = new Vec2(Math.cos(angle), Math.sin(angle));
      Vec2 y = random.nextBoolean() ? x.left() : x.left().times(-1);
      var by = new Transform2(x, y, new Vec2(random.nextDouble(), random.nextDouble()));
      SectionOutline moved = draw(new Profile.Placed("", by, profile));
      assertThat(moved.area()).isCloseTo(plain.area(), withPercentage(1e-9));
      assertThat(moved.outerPerimeter()).isCloseTo(plain.outerPerimeter(), withPercentage(1e-9));
      assertThat(moved.innerPerimeter()).isCloseTo(plain.innerPerimeter(), within(1e-12));
    }
  }

  @Test
  void anyAffineMapScalesTheAreaByItsDeterminant() {
    for (int i = 0; i < ROUNDS; i++) {
      Profile profile = profile();
      var by =
          new Transform2(
              new Vec2(1 + random.nextDouble(), random.nextDouble()),
              new Vec2(-random.nextDouble(), 0.5 + random.nextDouble()),
              new Vec2(random.nextDouble(), 3));
      double grown = draw(new Profile.Placed("", by, profile)).area();
      assertThat(grown).isCloseTo(draw(profile).area() * by.determinant(), withPercentage(1e-9));
    }
  }

  @Test
  void polygonsHaveTheAreaOfTheirRings() {
    for (int i = 0; i < ROUNDS; i++) {
      for (Region region : draw(profile()).regions()) {
        for (int strips = 1; strips < 13; strips += 5) {
          List<Vec2> corners = FlatRing.of(region.outer(), strips).points();
          assertThat(shoelace(corners)).isCloseTo(region.outer().area(), withPercentage(1e-9));
        }
      }
    }
  }

  /** Some profile of some kind with dimensions that it can have. */
  private Profile profile() {
    double d = 0.3 + random.nextDouble();
    double b = 0.1 + random.nextDouble() * 0.4;
    double t = 0.02 * b * (1 + random.nextDouble());
    double r = t * (0.5 + random.nextDouble());
    double slope = 0.1 * random.nextDouble();
    double edge = 0.3 * t;
    return switch (random.nextInt(12)) {
      case 0 -> new Profile.IShape("", b, d, t, 3 * t, some(r), some(edge), some(slope));
      case 1 -> new Profile.UShape("", d, b, t, 4 * t, some(r), some(edge), some(slope));
      case 2 -> new Profile.LShape("", d, b, t * d / b + t, some(r), some(edge), NO);
      case 3 ->
          new Profile.TShape(
              "", d, b, 2 * t, 3 * t, some(r), some(edge), some(edge), NO, some(slope));
      case 4 -> new Profile.CShape("", d + b, b, t, 0.2 * b, some(r));
      case 5 -> new Profile.ZShape("", d + b, b, t, t, some(r), some(edge));
      case 6 -> new Profile.RectangleHollow("", b, d, t, some(t), some(2 * t));
      case 7 -> new Profile.CircleHollow("", b, t);
      case 8 -> new Profile.Ellipse("", b, d);
      case 9 -> new Profile.Rectangle("", b, d, 0.2 * Math.min(b, d));
      case 10 -> new Profile.Outline("", blob(b), List.of());
      default ->
          new Profile.AsymmetricI(
              "",
              d,
              t,
              new Profile.Flange(b, 3 * t, some(r), NO, some(slope)),
              new Profile.Flange(b / 2, 2 * t, some(r / 2), some(edge), NO));
    };
  }

  /** A closed spline through a ring of poles, with one straight side. */
  private Curve2 blob(double size) {
    var poles = new ArrayList<Vec2>();
    int n = 9;
    for (int i = 0; i < n; i++) {
      double radius = size * (0.8 + 0.4 * random.nextDouble());
      double angle = 1.5 * Math.PI * i / (n - 1);
      poles.add(new Vec2(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    var weights = new ArrayList<Double>();
    poles.forEach(p -> weights.add(0.5 + random.nextDouble()));
    List<Double> knots = List.of(0., 0., 0., 0., 1., 2., 3., 4., 5., 6., 6., 6., 6.);
    var spline = new Segment2.Spline(3, poles, weights, knots);
    return new Curve2(List.of(spline, new Segment2.Line(poles.get(n - 1), poles.get(0))), true);
  }

  private static List<Vec2> facets(Ring ring) {
    var out = new ArrayList<Vec2>();
    for (Segment2 piece : ring.pieces()) {
      int n = piece instanceof Segment2.Line ? 1 : 2000;
      double from = Pieces.first(piece);
      double step = (Pieces.last(piece) - from) / n;
      for (int i = 0; i < n; i++) {
        out.add(Pieces.at(piece, from + i * step));
      }
    }
    return out;
  }

  private static double facetArea(Ring ring) {
    return shoelace(facets(ring));
  }

  private static double shoelace(List<Vec2> corners) {
    double sum = 0;
    for (int i = 0; i < corners.size(); i++) {
      sum += 0.5 * corners.get(i).cross(corners.get((i + 1) % corners.size()));
    }
    return sum;
  }

  private static double facetLength(Ring ring) {
    List<Vec2> corners = facets(ring);
    double sum = 0;
    for (int i = 0; i < corners.size(); i++) {
      sum += corners.get(i).distance(corners.get((i + 1) % corners.size()));
    }
    return sum;
  }
}
