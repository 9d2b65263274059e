package org.coatrun.geometry.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.coatrun.geometry.profile.Drawing.MM;
import static org.coatrun.geometry.profile.Drawing.draw;

import org.coatrun.shared.shape.Profile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Surface per metre and area of European sections as tabulated (dimensions by EN 10365 and EN
 * 10210-2; the figures as carried by the open data set of eurocodepy, pcachim/eurocodepy, MIT).
 * Section factors Am/V by EN 1993-1-2 table 4.2 for all-round and three-sided exposure.
 */
class EuropeanSectionsTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // h, b, tw, tf, r in mm; A in cm2; surface in m2/m
    "IPE80, 80, 46, 3.8, 5.2, 5, 7.64, 0.328",
    "IPE120, 120, 64, 4.4, 6.3, 7, 13.21, 0.475",
    "IPE160, 160, 82, 5, 7.4, 9, 20.09, 0.623",
    "IPE200, 200, 100, 5.6, 8.5, 12, 28.48, 0.768",
    "IPE240, 240, 120, 6.2, 9.8, 15, 39.12, 0.922",
    "IPE300, 300, 150, 7.1, 10.7, 15, 53.81, 1.16",
    "IPE360, 360, 170, 8, 12.7, 18, 72.73, 1.353",
    "IPE400, 400, 180, 8.6, 13.5, 21, 84.46, 1.467",
    "IPE500, 500, 200, 10.2, 16, 21, 115.52, 1.744",
    "IPE600, 600, 220, 12, 19, 24, 155.98, 2.015",
    "HEA100, 96, 100, 5, 8, 12, 21.24, 0.561",
    "HEA180, 171, 180, 6, 9.5, 15, 45.25, 1.024",
    "HEA200, 190, 200, 6.5, 10, 18, 53.83, 1.136",
    "HEA300, 290, 300, 8.5, 14, 27, 112.53, 1.717",
    "HEA600, 590, 300, 13, 25, 27, 226.46, 2.308",
    "HEB100, 100, 100, 6, 10, 12, 26.04, 0.567",
    "HEB200, 200, 200, 9, 15, 18, 78.08, 1.151",
    "HEB300, 300, 300, 11, 19, 27, 149.08, 1.732",
    "HEB450, 450, 300, 14, 26, 27, 217.98, 2.026",
    "HEM100, 120, 106, 12, 20, 12, 53.24, 0.619",
    "HEM200, 220, 206, 15, 25, 18, 131.28, 1.203",
    "HEM300, 340, 310, 21, 39, 27, 303.08, 1.832"
  })
  void rolledBeamsMeasureTheTable(
      String name,
      double h,
      double b,
      double tw,
      double tf,
      double r,
      double area,
      double surface) {
    SectionOutline outline = draw(Drawing.i(MM, b, h, tw, tf, r));
    assertThat(outline.area() * 1e4).isCloseTo(area, withPercentage(0.3));
    assertThat(outline.outerPerimeter()).isCloseTo(surface, withPercentage(0.3));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // contour on four and three sides, box on four and three sides, 1/m
    "IPE200, 200, 100, 5.6, 8.5, 12, 269.7, 234.6, 210.7, 175.6",
    "IPE300, 300, 150, 7.1, 10.7, 15, 215.6, 187.7, 167.3, 139.4",
    "IPE600, 600, 220, 12, 19, 24, 129.2, 115.1, 105.1, 91.0",
    "HEA200, 190, 200, 6.5, 10, 18, 211.0, 173.9, 144.9, 107.7",
    "HEA300, 290, 300, 8.5, 14, 27, 152.6, 125.9, 104.9, 78.2",
    "HEB200, 200, 200, 9, 15, 18, 147.4, 121.8, 102.5, 76.8",
    "HEB300, 300, 300, 11, 19, 27, 116.2, 96.1, 80.5, 60.4",
    "HEM300, 340, 310, 21, 39, 27, 60.4, 50.2, 42.9, 32.7"
  })
  void sectionFactorsFollow(
      String name,
      double h,
      double b,
      double tw,
      double tf,
      double r,
      double four,
      double three,
      double boxFour,
      double boxThree) {
    SectionOutline o = draw(Drawing.i(MM, b, h, tw, tf, r));
    assertThat(o.outerPerimeter() / o.area()).isCloseTo(four, withPercentage(0.3));
    assertThat((o.outerPerimeter() - o.flatOn(Side.TOP)) / o.area())
        .isCloseTo(three, withPercentage(0.3));
    assertThat(o.bounds().perimeter() / o.area()).isCloseTo(boxFour, withPercentage(0.3));
    assertThat(o.boxWithout(Side.TOP) / o.area()).isCloseTo(boxThree, withPercentage(0.3));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // outer radius 1.5 t, inner radius t (EN 10210-2)
    "RHS100x50x5, 50, 100, 5, 13.7, 0.287",
    "RHS200x100x8, 100, 200, 8, 44.8, 0.579",
    "RHS300x200x10, 200, 300, 10, 94.9, 0.974",
    "RHS120x80x6.3, 80, 120, 6.3, 23.2, 0.384",
    "SHS60x60x4, 60, 60, 4, 8.79, 0.230",
    "SHS100x100x5, 100, 100, 5, 18.7, 0.387",
    "SHS150x150x8, 150, 150, 8, 44.8, 0.579",
    "SHS200x200x10, 200, 200, 10, 74.9, 0.774"
  })
  void rectangularTubesMeasureTheTable(
      String name, double b, double h, double t, double area, double surface) {
    SectionOutline outline = draw(Drawing.tube(MM, b, h, t, t, 1.5 * t));
    assertThat(outline.area() * 1e4).isCloseTo(area, withPercentage(0.4));
    assertThat(outline.outerPerimeter()).isCloseTo(surface, withPercentage(0.4));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "CHS60.3x3.2, 60.3, 3.2, 5.74, 0.189",
    "CHS114.3x5, 114.3, 5, 17.2, 0.359",
    "CHS193.7x8, 193.7, 8, 46.7, 0.609",
    "CHS219.1x6.3, 219.1, 6.3, 42.1, 0.688",
    "CHS323.9x10, 323.9, 10, 98.6, 1.02"
  })
  void roundTubesMeasureTheTable(String name, double d, double t, double area, double surface) {
    SectionOutline outline = draw(new Profile.CircleHollow(name, d * MM / 2, t * MM));
    assertThat(outline.area() * 1e4).isCloseTo(area, withPercentage(0.4));
    assertThat(outline.outerPerimeter()).isCloseTo(surface, withPercentage(0.4));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // UK sections: surface and area as printed in the UK's section tables
    "UB 254x102x22, 254, 101.6, 5.7, 6.8, 7.6, 28.0, 0.890",
    "UB 305x165x40, 303.4, 165, 6, 10.2, 8.9, 51.3, 1.24",
    "UB 457x191x67, 453.4, 189.9, 8.5, 12.7, 10.2, 85.5, 1.63",
    "UB 533x210x92, 533.1, 209.3, 10.1, 15.6, 12.7, 117, 1.86"
  })
  void britishBeamsMeasureTheTable(
      String name,
      double h,
      double b,
      double tw,
      double tf,
      double r,
      double area,
      double surface) {
    SectionOutline outline = draw(Drawing.i(MM, b, h, tw, tf, r));
    assertThat(outline.area() * 1e4).isCloseTo(area, withPercentage(0.5));
    assertThat(outline.outerPerimeter()).isCloseTo(surface, withPercentage(0.4));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"PFC 300x100x46, 300, 100, 9, 16.5, 15, 58.0, 0.969"})
  void parallelFlangeChannelsMeasureTheTable(
      String name,
      double h,
      double b,
      double tw,
      double tf,
      double r,
      double area,
      double surface) {
    SectionOutline outline = draw(Drawing.channel(MM, b, h, tw, tf, r));
    assertThat(outline.area() * 1e4).isCloseTo(area, withPercentage(0.3));
    assertThat(outline.outerPerimeter()).isCloseTo(surface, withPercentage(0.1));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // parameters of the sample beams that buildingSMART publishes with IFC 4.3 (IFC4.3.x sample
    // models, building elements); perimeter in mm and area in mm2 follow in closed form
    "IPE220, 110, 220, 5.9, 9.2, 12, 847.598, 3337.05",
    "IPE200, 100, 200, 5.6, 8.5, 12, 768.198, 2848.41"
  })
  void sampleBeamsMeasureToATenthOfAPerCent(
      String name, double b, double h, double tw, double tf, double r, double p, double area) {
    SectionOutline outline = draw(Drawing.i(MM, b, h, tw, tf, r));
    assertThat(outline.outerPerimeter() / MM).isCloseTo(p, withPercentage(0.001));
    assertThat(outline.area() / (MM * MM)).isCloseTo(area, withPercentage(0.001));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"half an IPE300, 150, 150, 7.1, 10.7, 15, 587.124, 2690.60"})
  void sampleTeesMeasureToATenthOfAPerCent(
      String name, double b, double h, double tw, double tf, double r, double p, double area) {
    SectionOutline outline = draw(Drawing.tee(MM, b, h, tw, tf, r));
    assertThat(outline.outerPerimeter() / MM).isCloseTo(p, withPercentage(0.001));
    assertThat(outline.area() / (MM * MM)).isCloseTo(area, withPercentage(0.001));
  }
}
