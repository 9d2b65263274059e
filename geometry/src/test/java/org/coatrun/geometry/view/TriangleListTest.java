package org.coatrun.geometry.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.coatrun.geometry.solid.ConvexParts;
import org.coatrun.geometry.solid.Plane;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.WKTReader;

/** Regions that cutting leaves, as triangles of the same area. */
class TriangleListTest {

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
  void trianglesHaveTheAreaOfTheRegion(String wkt) throws Exception {
    Geometry region = new WKTReader().read(wkt);
    TriangleList list = new TriangleList();
    list.add(Plane.through(0, 0, 0, 0, 0, 1), ConvexParts.of((Polygon) region), true);

    double area = 0;
    double[] p = list.all().points();
    int[] corners = list.all().corners();
    for (int i = 0; i < corners.length; i += 3) {
      int a = 3 * corners[i];
      int b = 3 * corners[i + 1];
      int c = 3 * corners[i + 2];
      double x1 = p[b] - p[a];
      double y1 = p[b + 1] - p[a + 1];
      double x2 = p[c] - p[a];
      double y2 = p[c + 1] - p[a + 1];
      area += Math.abs(x1 * y2 - x2 * y1) / 2;
    }
    assertThat(area).isCloseTo(region.getArea(), within(1e-9));
  }
}
