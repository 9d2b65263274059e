package org.coatrun.geometry.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.coatrun.shared.shape.Vec2;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** What covers leave of a region, against closed forms and the overlay of the JTS library. */
class RemainsTest {

  private final Kernel kernel = new Kernel(Tolerance.DEFAULT);

  @Test
  void whatNothingCoversIsTheRegionItself() {
    Polygon square = box(0, 0, 1, 1);
    Remains remains = new Remains(square, kernel);
    assertThat(remains.less(box(1, 0, 2, 1))).isZero();
    assertThat(remains.less(box(0.9999999999, 0, 2, 1))).as("a sliver").isZero();
    assertThat(remains.isWhole()).isTrue();
    assertThat((Object) remains.remainder().region()).isSameAs(square);
    assertThat(remains.remainder().taken()).isEmpty();
  }

  @Test
  void whatTwoCoverIsTakenByTheFirst() {
    Remains remains = new Remains(box(0, 0, 2, 1), kernel);
    assertThat(remains.less(box(0.5, -1, 1, 2))).isCloseTo(0.5, within(1e-12));
    assertThat(remains.less(box(0.5, -1, 1.5, 2))).isCloseTo(0.5, within(1e-12));
    assertThat(remains.area()).isCloseTo(1, within(1e-12));
    assertThat(remains.window()).containsExactly(0, 0, 2, 1);
    assertThat(remains.less(box(-1, -1, 3, 2))).isCloseTo(1, within(1e-12));
    assertThat(remains.isEmpty()).isTrue();
    assertThat(remains.remainder().region().isEmpty()).isTrue();
  }

  /** Of few corners and of many: stars cover quads and stars, one after another. */
  @Test
  void randomCoversLeaveWhatTheOverlayLeaves() {
    Random random = new Random(11);
    for (int run = 0; run < 200; run++) {
      Polygon region = run % 2 == 0 ? box(-0.7, -0.6, 0.8, 0.9) : star(random, 0, 0);
      Remains remains = new Remains(region, kernel);
      Geometry expected = region;
      double took = 0;
      for (int i = 0; i < 4; i++) {
        Polygon cover = star(random, random.nextDouble() - 0.5, random.nextDouble() - 0.5);
        took += remains.less(cover);
        expected = OverlayNGRobust.overlay(expected, cover, OverlayNG.DIFFERENCE);
      }
      assertThat(remains.area()).as("run %d", run).isCloseTo(expected.getArea(), within(1e-6));
      assertThat(took + remains.area()).isCloseTo(region.getArea(), within(1e-9));
      assertThat(remains.remainder().region().getArea()).isCloseTo(remains.area(), within(1e-9));
      List<Geometry> all = new ArrayList<>(remains.remainder().taken());
      all.add(remains.remainder().region());
      assertThat(all.stream().mapToDouble(Geometry::getArea).sum())
          .as("run %d", run)
          .isCloseTo(region.getArea(), within(1e-6));
      Geometry missed =
          OverlayNGRobust.overlay(
              remains.remainder().region().buffer(0), expected, OverlayNG.SYMDIFFERENCE);
      assertThat(missed.getArea()).as("run %d", run).isCloseTo(0, within(1e-5));
    }
  }

  @Test
  void theMiddleOfWhatIsSharedIsThatOfTheOverlay() {
    Random random = new Random(12);
    for (int run = 0; run < 100; run++) {
      Polygon region = star(random, 0, 0);
      Polygon other = star(random, random.nextDouble() - 0.5, random.nextDouble() - 0.5);
      Remains remains = new Remains(region, kernel);
      remains.less(box(-0.1, -2, 0.1, 2));
      Geometry left = OverlayNGRobust.overlay(region, box(-0.1, -2, 0.1, 2), OverlayNG.DIFFERENCE);
      Point middle = OverlayNGRobust.overlay(left, other, OverlayNG.INTERSECTION).getCentroid();
      assertThat(remains.middleWithin(other)).as("run %d", run).isPresent();
      Vec2 found = remains.middleWithin(other).get();
      assertThat(found.distance(new Vec2(middle.getX(), middle.getY())))
          .as("run %d", run)
          .isCloseTo(0, within(1e-5));
    }
    assertThat(new Remains(box(0, 0, 1, 1), kernel).middleWithin(box(1, 0, 2, 1))).isEmpty();
  }

  /** Five to fifty corners, so that both ways are taken. */
  private static Polygon star(Random random, double u, double v) {
    int corners = 5 + random.nextInt(45);
    double[] ring = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + 0.9 * random.nextDouble()) / corners;
      double radius = 0.2 + random.nextDouble();
      ring[2 * i] = u + radius * Math.cos(angle);
      ring[2 * i + 1] = v + radius * Math.sin(angle);
    }
    return Rings.FACTORY.createPolygon(Rings.linear(ring));
  }

  private static Polygon box(double u0, double v0, double u1, double v1) {
    return Rings.FACTORY.createPolygon(Rings.linear(new double[] {u0, v0, u1, v0, u1, v1, u0, v1}));
  }
}
