package org.coatrun.geometry.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.WKTReader;

/** Regions that cutting leaves, as convex rings of the same area. */
class ConvexPartsTest {

  /** The last four come from a roof of glass: two points of each are one but for rounding. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "POLYGON ((0 0, 2 0, 2 1, 0 1, 0 0))",
        "POLYGON ((0 0, 4 0, 4 4, 0 4, 0 0), (1 1, 1 2, 2 2, 2 1, 1 1))",
        "POLYGON ((16.728331254071094 39.51427170543006, 16.72833125407109 39.51427170543006,"
            + " 16.728226903821028 39.51428610174777, 16.728267599087463 39.51427170543006,"
            + " 16.728331254071094 39.51427170543006))",
        "POLYGON ((0.9498746432471046 -20.50088431355697, 0.9498746432471045 -20.50088431355697,"
            + " 0.9913479033806641 -20.50088431355697, 0.9913479033806641 -20.500314310202484,"
            + " 0.9498746432471046 -20.50088431355697))",
        "POLYGON ((27.584308626721626 7.960944778343766, 27.593441158455548 7.9526845554376315,"
            + " 27.593441158455548 7.958270072653228, 27.584308626721626 7.972294582452483,"
            + " 27.584308626721626 7.972294582452484, 27.584308626721626 7.960944778343766))",
        "POLYGON ((24.90878151679504 -1.689473437091594, 24.90878151679504 -1.6660696527516656,"
            + " 24.887965590834973 -1.735482828890996, 24.887965590834973 -1.7588866132309224,"
            + " 24.887965590834973 -1.758886613230922, 24.90878151679504 -1.689473437091594))"
      })
  void ringsHaveTheAreaOfTheRegion(String wkt) throws Exception {
    Polygon region = (Polygon) new WKTReader().read(wkt);
    double area = 0;
    for (double[] ring : ConvexParts.of(region)) {
      for (int i = 2; i + 2 < ring.length; i += 2) {
        area += Math.abs(triangle(ring, i)) / 2;
      }
    }
    assertThat(area).isCloseTo(region.getArea(), within(1e-9));
  }

  /** Twice the area of the first corner and two that follow each other. */
  private static double triangle(double[] ring, int i) {
    return (ring[i] - ring[0]) * (ring[i + 3] - ring[1])
        - (ring[i + 2] - ring[0]) * (ring[i + 1] - ring[1]);
  }
}
