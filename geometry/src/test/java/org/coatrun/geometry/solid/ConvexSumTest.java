package org.coatrun.geometry.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** What regions cover together, against closed forms and the overlay of the JTS library. */
class ConvexSumTest {

  @Test
  void whatTwoShareCountsOnce() {
    ConvexSum sum = new ConvexSum();
    sum.add(box(0, 0, 2, 1));
    sum.add(box(1, 0.5, 3, 2));
    sum.add(box(0, 0, 2, 1));
    assertThat(sum.areaOutside(Overlay.EMPTY, 0)).isCloseTo(2 + 3 - 0.5, within(1e-15));
    assertThat(sum.areaOutside(polygon(box(-1, -1, 0.5, 5)), 0)).isCloseTo(4, within(1e-15));
  }

  @Test
  void whatOnlyTouchesTheRegionCountsWhole() {
    ConvexSum sum = new ConvexSum();
    sum.add(box(0, 0, 2, 1));
    Polygon near = polygon(box(-1, -1, 3, 1e-9));
    assertThat(sum.areaOutside(near, 1e-7)).isEqualTo(2);
    assertThat(sum.areaOutside(near, 0)).isLessThan(2);
  }

  @Test
  void ringWithoutAreaCountsNothing() {
    ConvexSum sum = new ConvexSum();
    sum.add(0, 0, 1, 0, 2, 0);
    assertThat(sum.areaOutside(Overlay.EMPTY, 0)).isZero();
  }

  /** Edges that are nothing but rounding have no direction, and must not cut or fail to. */
  @Test
  void ringOfRoundingSharesHardlyAnything() {
    Polygon region = polygon(box(-1, -1, 2, 2));
    double hair = 1e-11;
    for (double far : new double[] {hair, 1e-9, 0.5}) {
      ConvexSum sum = new ConvexSum();
      sum.add(0.5, 0.5, 0.5 + far, 0.5, 0.5, 0.5 + hair);
      assertThat(sum.areaOutside(region, 0)).as("%s long", far).isBetween(0.0, 1e-11);
    }
    ConvexSum sum = new ConvexSum();
    sum.add(0, 0, 1, 0, 1, 1, 1 - hair, 1 + 1e-17, 0, 1);
    sum.add(0, 0, 1, 0, 1, 1, 0, 1);
    assertThat(sum.areaOutside(Overlay.EMPTY, 0)).isCloseTo(1, within(1e-9));
  }

  @Test
  void randomTrianglesCoverWhatTheirUnionCovers() {
    Random random = new Random(11);
    for (int run = 0; run < 60; run++) {
      ConvexSum sum = new ConvexSum();
      List<Geometry> parts = new ArrayList<>();
      for (int i = 0; i < 25; i++) {
        double[] ring = triangle(random);
        sum.add(ring);
        parts.add(polygon(ring));
      }
      Polygon less = polygon(0.2, 0.2, 0.9, 0.3, 0.5, 0.4, 0.4, 0.9);
      Geometry union = OverlayNGRobust.union(Rings.FACTORY.buildGeometry(parts));
      double expected = OverlayNGRobust.overlay(union, less, OverlayNG.DIFFERENCE).getArea();
      assertThat(sum.areaOutside(less, 0)).as("run %d", run).isCloseTo(expected, within(1e-12));
    }
  }

  private static double[] triangle(Random random) {
    double[] ring = random.doubles(6).toArray();
    return Rings.area(ring) > 0
        ? ring
        : new double[] {ring[4], ring[5], ring[2], ring[3], ring[0], ring[1]};
  }

  private static double[] box(double u0, double v0, double u1, double v1) {
    return new double[] {u0, v0, u1, v0, u1, v1, u0, v1};
  }

  private static Polygon polygon(double... ring) {
    return Rings.FACTORY.createPolygon(Rings.linear(ring));
  }
}
