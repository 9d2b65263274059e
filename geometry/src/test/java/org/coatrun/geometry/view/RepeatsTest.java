package org.coatrun.geometry.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.coatrun.geometry.solid.Kernel;
import org.coatrun.geometry.solid.Tolerance;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.WKTReader;

/** What was cut before is told from what only fills the same box. */
class RepeatsTest {

  private static Polygon polygon(String wkt) throws Exception {
    return (Polygon) new WKTReader().read(wkt);
  }

  @Test
  void alikePolygonsAreCutOnce() throws Exception {
    String angle = "POLYGON ((0 0, 4 0, 4 1, 1 1, 1 3, 0 3, 0 0))";
    Repeats repeats = new Repeats();

    Coordinate[][] first = repeats.ears(polygon(angle));

    assertThat(first).hasDimensions(4, 4);
    assertThat(repeats.ears(polygon(angle))).isSameAs(first);
  }

  @Test
  void aMirrorImageIsAnotherPolygon() throws Exception {
    Polygon angle = polygon("POLYGON ((0 0, 4 0, 4 1, 1 1, 1 3, 0 3, 0 0))");
    Polygon mirrored = polygon("POLYGON ((0 0, 4 0, 4 3, 3 3, 3 1, 0 1, 0 0))");
    Repeats repeats = new Repeats();

    repeats.ears(angle);

    assertThat(repeats.ears(mirrored)).isDeepEqualTo(new Repeats().ears(mirrored));
    for (Coordinate[] triangle : repeats.ears(mirrored)) {
      assertThat(mirrored.covers(mirrored.getFactory().createPolygon(triangle))).isTrue();
    }
  }

  @Test
  void whatIsCoveredIsToldByTheRestOfARegion() throws Exception {
    Polygon region = polygon("POLYGON ((0 0, 4 0, 4 4, 0 4, 0 0))");
    Polygon left = polygon("POLYGON ((0 0, 1 0, 1 4, 0 4, 0 0))");
    Polygon right = polygon("POLYGON ((3 0, 4 0, 4 4, 3 4, 3 0))");
    Kernel kernel = new Kernel(Tolerance.DEFAULT);
    Repeats repeats = new Repeats();

    Geometry first = repeats.covered(region, left, kernel);

    assertThat(first.getArea()).isCloseTo(12, within(1e-9));
    assertThat((Object) repeats.covered(region, polygon(left.toText()), kernel)).isSameAs(first);
    assertThat(repeats.covered(region, right, kernel).covers(left)).isTrue();
  }

  @Test
  void aHoleMakesAnotherPolygon() throws Exception {
    String shell = "POLYGON ((0 0, 9 0, 9 9, 8 10, 0 9, 0 0)";
    Repeats repeats = new Repeats();

    int whole = repeats.ears(polygon(shell + ")")).length;

    assertThat(repeats.ears(polygon(shell + ", (3 3, 3 6, 6 6, 6 3, 3 3))")).length)
        .isGreaterThan(whole);
  }
}
