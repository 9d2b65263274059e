package org.coatrun.geometry.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Cuts by trees, against closed forms and against the overlay of the JTS library. */
class ConvexTreeTest {

  private static final double[] STRIP = {-1, -0.1, 2, -0.1, 2, 0.3, -1, 0.3};

  /** An H of unit width: flanges of 0.2 to the left and right, a web of 0.2 in the middle. */
  private static final double[] H = {
    0, 0, 0.2, 0, 0.2, 0.4, 0.8, 0.4, 0.8, 0, 1, 0, 1, 1, 0.8, 1, 0.8, 0.6, 0.2, 0.6, 0.2, 1, 0, 1
  };

  @Test
  void stripAcrossTwoFlangesLosesBoth() {
    double left = area(less(STRIP, polygon(H)));
    assertThat(left).isCloseTo(3 * 0.4 - 2 * 0.2 * 0.3, within(1e-15));
  }

  @Test
  void holeOfWhatIsTakenStays() {
    Polygon frame =
        Rings.FACTORY.createPolygon(
            Rings.linear(box(0, 0, 1, 1)),
            new LinearRing[] {Rings.linear(box(0.25, 0.25, 0.75, 0.5))});
    double left = area(less(box(-1, -1, 2, 2), frame));
    assertThat(left).isCloseTo(9 - 1 + 0.5 * 0.25, within(1e-14));
  }

  @Test
  void piecesAreConvexAndLieSideBySide() {
    List<double[]> pieces = less(box(-1, -1, 2, 2), polygon(H));
    for (int i = 0; i < pieces.size(); i++) {
      assertThat(ConvexClip.ring(polygon(pieces.get(i)))).isNotNull();
      for (int j = 0; j < i; j++) {
        double[] both = ConvexClip.common(pieces.get(i), pieces.get(j));
        assertThat(both == null ? 0 : Rings.area(both)).isCloseTo(0, within(1e-15));
      }
    }
    assertThat(area(pieces)).isCloseTo(9 - 0.52, within(1e-14));
  }

  @Test
  void whatIsSharedAndWhatIsLeftMakeUpTheWhole() {
    List<double[]> shared = common(STRIP, polygon(H));
    assertThat(area(shared)).isCloseTo(2 * 0.2 * 0.3, within(1e-15));
    assertThat(shared).allSatisfy(r -> assertThat(ConvexClip.ring(polygon(r))).isNotNull());
  }

  @Test
  void allOfARegionIsItsConvexParts() {
    assertThat(area(ConvexTree.of(polygon(H)).orElseThrow().parts()))
        .isCloseTo(0.52, within(1e-15));
  }

  /** A bow, a five-pointed star in one line, and a bow in a pocket. */
  @Test
  void whatCrossesItselfHasNoTree() {
    assertThat(ConvexTree.of(polygon(0, 0, 2, 2, 2, 0, 0, 2))).isEmpty();
    assertThat(ConvexTree.of(polygon(0, 3, 2, -3, -3, 1, 3, 1, -2, -3))).isEmpty();
    assertThat(ConvexTree.of(polygon(0, 0, 4, 0, 4, 4, 1, 2, 3, 2, 0, 4))).isEmpty();
  }

  @Test
  void whatHasManyCornersHasNoTree() {
    assertThat(ConvexTree.of(polygon(star(new Random(3), 31)))).isPresent();
    assertThat(ConvexTree.of(polygon(star(new Random(3), 40)))).isEmpty();
  }

  /** A pocket with a pocket of its own. */
  @Test
  void pocketsAreTreesAgain() {
    double[] spiral = {0, 0, 5, 0, 5, 5, 1, 5, 1, 2, 3, 2, 3, 3, 2, 3, 2, 4, 4, 4, 4, 1, 0, 1};
    double[] square = box(1.5, 1.5, 3.5, 3.5);
    double expected =
        OverlayNGRobust.overlay(polygon(square), polygon(spiral), OverlayNG.DIFFERENCE).getArea();
    assertThat(area(less(square, polygon(spiral)))).isCloseTo(expected, within(1e-14));
  }

  @Test
  void randomStarsTakeAndLeaveWhatTheOverlayDoes() {
    Random random = new Random(7);
    for (int run = 0; run < 500; run++) {
      Polygon star = polygon(star(random, 5 + random.nextInt(26)));
      double[] quad = turned(random, box(-0.5 - random.nextDouble(), -0.2, 1, 0.9));
      double left = OverlayNGRobust.overlay(polygon(quad), star, OverlayNG.DIFFERENCE).getArea();
      assertThat(area(less(quad, star))).as("run %d", run).isCloseTo(left, within(1e-12));
      assertThat(area(common(quad, star)))
          .as("run %d", run)
          .isCloseTo(Rings.area(quad) - left, within(1e-12));
    }
  }

  private static List<double[]> less(double[] convex, Polygon region) {
    List<double[]> out = new ArrayList<>();
    ConvexTree.of(region).orElseThrow().less(convex, out);
    return out;
  }

  private static List<double[]> common(double[] convex, Polygon region) {
    List<double[]> out = new ArrayList<>();
    ConvexTree.of(region).orElseThrow().common(convex, out);
    return out;
  }

  private static double[] star(Random random, int corners) {
    double[] ring = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + 0.9 * random.nextDouble()) / corners;
      double radius = 0.1 + random.nextDouble();
      ring[2 * i] = radius * Math.cos(angle);
      ring[2 * i + 1] = radius * Math.sin(angle);
    }
    return ring;
  }

  private static double[] turned(Random random, double... ring) {
    double angle = random.nextInt(4) == 0 ? 0 : 2 * Math.PI * random.nextDouble();
    double[] out = new double[ring.length];
    for (int i = 0; i < ring.length; i += 2) {
      out[i] = Math.cos(angle) * ring[i] - Math.sin(angle) * ring[i + 1];
      out[i + 1] = Math.sin(angle) * ring[i] + Math.cos(angle) * ring[i + 1];
    }
    return out;
  }

  private static double[] box(double u0, double v0, double u1, double v1) {
    return new double[] {u0, v0, u1, v0, u1, v1, u0, v1};
  }

  private static Polygon polygon(double... ring) {
    return Rings.FACTORY.createPolygon(Rings.linear(ring));
  }

  private static double area(List<double[]> rings) {
    return rings.stream().mapToDouble(Rings::area).sum();
  }
}
