package org.coatrun.geometry.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.coatrun.geometry.profile.Drawing.INCH;
import static org.coatrun.geometry.profile.Drawing.draw;

import org.coatrun.shared.shape.Profile;
import org.coatrun.shared.surface.SectionMeasure.Basis;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.SectionFactor;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Perimeters of American sections in inches: PA (one flange face left out), PB (all round), PC and
 * PD (the box on three and four sides) of the AISC Shapes Database v15.0, as used in AISC Design
 * Guide 19. The root radius that they go by is kdes less the flange thickness.
 */
class AmericanSectionsTest {

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "W44X335, 335.0, 98.5, 44.0, 15.9, 1.03, 1.77, 2.56, 132.0, 148.0, 104.0, 120.0",
    "W36X302, 302.0, 89.0, 37.3, 16.7, 0.945, 1.68, 2.63, 121.0, 138.0, 91.3, 108.0",
    "W30X99, 99.0, 29.0, 29.7, 10.5, 0.52, 0.67, 1.32, 88.7, 99.2, 69.9, 80.4",
    "W27X84, 84.0, 24.7, 26.7, 10.0, 0.46, 0.64, 1.24, 81.5, 91.5, 63.4, 73.4",
    "W24X76, 76.0, 22.4, 23.9, 8.99, 0.44, 0.68, 1.18, 73.0, 82.0, 56.8, 65.8",
    "W24X55, 55.0, 16.2, 23.6, 7.01, 0.395, 0.505, 1.01, 66.6, 73.6, 54.2, 61.2",
    "W21X44, 44.0, 13.0, 20.7, 6.5, 0.35, 0.45, 0.95, 59.3, 65.8, 47.9, 54.4",
    "W18X35, 35.0, 10.3, 17.7, 6.0, 0.3, 0.425, 0.827, 52.1, 58.1, 41.4, 47.4",
    "W16X26, 26.0, 7.68, 15.7, 5.5, 0.25, 0.345, 0.747, 46.7, 52.2, 36.9, 42.4",
    "W14X233, 233.0, 68.5, 16.0, 15.9, 1.07, 1.72, 2.32, 76.5, 92.4, 47.9, 63.8",
    "W14X120, 120.0, 35.3, 14.5, 14.7, 0.59, 0.94, 1.54, 70.9, 85.6, 43.7, 58.4",
    "W14X90, 90.0, 26.5, 14.0, 14.5, 0.44, 0.71, 1.31, 69.6, 84.1, 42.5, 57.0",
    "W14X61, 61.0, 17.9, 13.9, 10.0, 0.375, 0.645, 1.24, 56.0, 66.0, 37.8, 47.8",
    "W14X43, 43.0, 12.6, 13.7, 8.0, 0.305, 0.53, 1.12, 49.8, 57.8, 35.4, 43.4",
    "W12X106, 106.0, 31.2, 12.9, 12.2, 0.61, 0.99, 1.59, 60.2, 72.4, 38.0, 50.2",
    "W12X72, 72.0, 21.1, 12.3, 12.0, 0.43, 0.67, 1.27, 58.7, 70.7, 36.6, 48.6",
    "W12X26, 26.0, 7.65, 12.2, 6.49, 0.23, 0.38, 0.68, 42.9, 49.4, 30.9, 37.4",
    "W12X14, 14.0, 4.16, 11.9, 3.97, 0.2, 0.225, 0.525, 34.8, 38.8, 27.8, 31.7",
    "W10X49, 49.0, 14.4, 10.0, 10.0, 0.34, 0.56, 1.06, 48.5, 58.5, 30.0, 40.0",
    "W10X33, 33.0, 9.71, 9.73, 7.96, 0.29, 0.435, 0.935, 41.9, 49.9, 27.4, 35.4",
    "W8X67, 67.0, 19.7, 9.0, 8.28, 0.57, 0.935, 1.33, 41.0, 49.3, 26.3, 34.6",
    "W8X31, 31.0, 9.13, 8.0, 8.0, 0.285, 0.435, 0.829, 38.8, 46.8, 24.0, 32.0",
    "W8X28, 28.0, 8.25, 8.06, 6.54, 0.285, 0.465, 0.859, 34.5, 41.0, 22.7, 29.2",
    "W6X20, 20.0, 5.87, 6.2, 6.02, 0.26, 0.365, 0.615, 29.5, 35.5, 18.4, 24.4",
    "W5X16, 16.0, 4.71, 5.01, 5.0, 0.24, 0.36, 0.66, 24.0, 29.0, 15.0, 20.0",
    "W4X13, 13.0, 3.83, 4.16, 4.06, 0.28, 0.345, 0.595, 19.5, 23.6, 12.4, 16.4"
  })
  void wideFlangesMeasureTheTable(
      String name,
      double w,
      double a,
      double d,
      double bf,
      double tw,
      double tf,
      double kdes,
      double pa,
      double pb,
      double pc,
      double pd) {
    SectionOutline outline = draw(Drawing.i(INCH, bf, d, tw, tf, kdes - tf));
    double whole = outline.outerPerimeter() / INCH;
    assertThat(whole).isCloseTo(pb, withPercentage(0.5));
    assertThat(whole - outline.flatOn(Side.TOP) / INCH).isCloseTo(pa, withPercentage(0.5));
    assertThat(outline.boxWithout(Side.TOP) / INCH).isCloseTo(pc, withPercentage(0.5));
    assertThat(outline.bounds().perimeter() / INCH).isCloseTo(pd, withPercentage(0.5));
    assertThat(outline.area() / (INCH * INCH)).isCloseTo(a, withPercentage(1.5));
    assertThat(w / whole).isCloseTo(w / pb, withPercentage(0.5));
    assertThat(outline.basis()).isEqualTo(Basis.FILLETED);
  }

  @DisplayName("sharp corners give 780 CMR table 721.5.1(1), fillets the current IBC 722.5.1(1)")
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // name, W, d, bf, tw, tf, k1 (AISC v15.0), W/D of 780 CMR, W/D of the current IBC table
    "W14X233, 233, 16.0, 15.9, 1.07, 1.72, 1.5625, 2.49, 2.55",
    "W14X120, 120, 14.5, 14.7, 0.59, 0.94, 1.5, 1.39, 1.42",
    "W14X90, 90, 14.0, 14.5, 0.44, 0.71, 1.4375, 1.06, 1.08",
    "W14X61, 61, 13.9, 10.0, 0.375, 0.645, 1.0, 0.91, 0.928",
    "W14X43, 43, 13.7, 8.0, 0.305, 0.53, 1.0, 0.73, 0.752",
    "W12X106, 106, 12.9, 12.2, 0.61, 0.99, 1.125, 1.44, 1.47",
    "W12X72, 72, 12.3, 12.0, 0.43, 0.67, 1.0625, 1.00, 1.02",
    "W10X49, 49, 10.0, 10.0, 0.34, 0.56, 0.8125, 0.83, 0.84",
    "W8X67, 67, 9.0, 8.28, 0.57, 0.935, 0.9375, 1.34, 1.37",
    "W8X31, 31, 8.0, 8.0, 0.285, 0.435, 0.75, 0.65, 0.665"
  })
  void bothPrintedConventionsComeOut(
      String name,
      double w,
      double d,
      double bf,
      double tw,
      double tf,
      double k1,
      double sharp,
      double filleted) {
    Profile p = Drawing.i(INCH, bf, d, tw, tf, k1 - tw / 2);
    assertThat(w / (draw(p).outerPerimeter() / INCH)).isCloseTo(filleted, withPercentage(1));
    var plain = (OutlineResult.Drawn) Outlines.sharp(p);
    assertThat(w / (plain.outline().outerPerimeter() / INCH)).isCloseTo(sharp, offset(0.008));
    assertThat(plain.outline().basis()).isEqualTo(Basis.SHARP);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "C12X20.7, 6.08, 12.0, 2.94, 0.282, 0.501, 1.13, 31.7, 34.6, 26.9, 29.9",
    "C8X11.5, 3.37, 8.0, 2.26, 0.22, 0.39, 0.938, 21.9, 24.1, 18.3, 20.5",
    "C15X50, 14.7, 15.0, 3.72, 0.716, 0.65, 1.44, 39.7, 43.4, 33.7, 37.4",
    "MC12X50, 14.7, 12.0, 4.14, 0.835, 0.7, 1.31, 35.0, 39.1, 28.1, 32.3",
    "MC8X20, 5.87, 8.0, 3.03, 0.4, 0.5, 1.13, 23.9, 27.0, 19.0, 22.1"
  })
  void channelsMeasureTheTable(
      String name,
      double a,
      double d,
      double bf,
      double tw,
      double tf,
      double kdes,
      double pa,
      double pb,
      double pc,
      double pd) {
    // the table's contour follows sloped flanges and toes that its columns do not give
    SectionOutline outline = draw(Drawing.channel(INCH, bf, d, tw, tf, kdes - tf));
    assertThat(outline.outerPerimeter() / INCH).isCloseTo(pb, withPercentage(2));
    assertThat((outline.outerPerimeter() - outline.flatOn(Side.TOP)) / INCH)
        .isCloseTo(pa, withPercentage(2.5));
    assertThat(outline.boxWithout(Side.TOP) / INCH).isCloseTo(pc, withPercentage(0.5));
    assertThat(outline.bounds().perimeter() / INCH).isCloseTo(pd, withPercentage(0.5));
    // the table's flanges taper by 1 in 6 and its area counts the toe radii, which this leaves out
    assertThat(outline.area() / (INCH * INCH)).isCloseTo(a, withPercentage(4));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "WT7X34, 10.0, 7.02, 10.0, 0.415, 0.72, 1.31, 23.4, 33.4, 24.0, 34.0",
    "WT5X11, 3.24, 5.09, 5.75, 0.24, 0.36, 0.66, 15.5, 21.3, 15.9, 21.7",
    "WT9X25, 7.34, 9.0, 7.5, 0.355, 0.57, 0.972, 25.0, 32.5, 25.5, 33.0"
  })
  void teesMeasureTheTable(
      String name,
      double a,
      double d,
      double bf,
      double tw,
      double tf,
      double kdes,
      double pa,
      double pb,
      double pc,
      double pd) {
    SectionOutline outline = draw(Drawing.tee(INCH, bf, d, tw, tf, kdes - tf));
    assertThat(outline.outerPerimeter() / INCH).isCloseTo(pb, withPercentage(0.75));
    assertThat((outline.outerPerimeter() - outline.flatOn(Side.TOP)) / INCH)
        .isCloseTo(pa, withPercentage(1.2));
    assertThat(outline.boxWithout(Side.TOP) / INCH).isCloseTo(pc, withPercentage(0.5));
    assertThat(outline.bounds().perimeter() / INCH).isCloseTo(pd, withPercentage(0.5));
    assertThat(outline.area() / (INCH * INCH)).isCloseTo(a, withPercentage(1.5));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // name, A, short leg, long leg, t, kdes, PA (less short leg), PA2 (less long leg), PB
    "L4X4X1/2, 3.75, 4, 4, 0.5, 0.875, 12.0, 12.0, 16.0",
    "L6X4X1/2, 4.75, 4, 6, 0.5, 1.0, 16.0, 14.0, 20.0",
    "L3X3X1/4, 1.44, 3, 3, 0.25, 0.625, 9.0, 9.0, 12.0",
    "L2X2X1/4, 0.944, 2, 2, 0.25, 0.5, 6.0, 6.0, 8.0",
    "L8X6X1, 13.1, 6, 8, 1.0, 1.5, 22.0, 20.0, 28.0"
  })
  void anglesMeasureTheTable(
      String name,
      double a,
      double shortLeg,
      double longLeg,
      double t,
      double kdes,
      double pa,
      double pa2,
      double pb) {
    // the table counts angles with sharp corners: PB = 2 (d + b)
    var plain =
        (OutlineResult.Drawn) Outlines.sharp(Drawing.angle(INCH, shortLeg, longLeg, t, kdes - t));
    SectionOutline outline = plain.outline();
    assertThat(outline.outerPerimeter() / INCH).isCloseTo(pb, withPercentage(0.01));
    assertThat((outline.outerPerimeter() - outline.flatOn(Side.LEFT)) / INCH)
        .isCloseTo(pa, withPercentage(0.01));
    assertThat((outline.outerPerimeter() - outline.flatOn(Side.BOTTOM)) / INCH)
        .isCloseTo(pa2, withPercentage(0.01));
    assertThat(outline.area() / (INCH * INCH)).isCloseTo(a, withPercentage(1));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // corners of 2 t outside and t inside (AISC v15.0: h = Ht - 3 tdes is the flat width)
    "HSS8X8X1/2, 8, 8, 0.465, 13.5, 30.40",
    "HSS8X4X3/8, 4, 8, 0.349, 7.58, 22.80",
    "HSS6X6X3/8, 6, 6, 0.349, 7.58, 22.80",
    "HSS12X6X1/2, 6, 12, 0.465, 15.3, 34.40",
    "HSS4X4X1/4, 4, 4, 0.233, 3.37, 15.20"
  })
  void hollowSectionsMeasureAreaAndOuterContour(
      String name, double b, double h, double t, double a, double perimeter) {
    SectionOutline outline = draw(Drawing.tube(INCH, b, h, t, t, 2 * t));
    assertThat(outline.area() / (INCH * INCH)).isCloseTo(a, withPercentage(0.5));
    assertThat(outline.outerPerimeter() / INCH).isCloseTo(perimeter, withPercentage(0.1));
    assertThat(outline.innerPerimeter() / INCH)
        .isCloseTo(2 * (b + h - 4 * t) - (8 - 2 * Math.PI) * t, withPercentage(1e-9));
  }

  @Test
  void roundTubesGiveAreaOverPerimeter() {
    // HSS6.000X0.500: A 8.09 in2, perimeter pi D = 18.85 in, A/P 0.429 in (AISC v15.0 A)
    SectionOutline outline =
        draw(new Profile.CircleHollow("HSS6.000X0.500", 3 * INCH, 0.465 * INCH));
    assertThat(outline.area() / (INCH * INCH)).isCloseTo(8.09, withPercentage(0.1));
    assertThat(outline.outerPerimeter() / INCH).isCloseTo(18.85, withPercentage(0.01));
    var factor =
        SectionFactor.of(
            Length.ofMetres(outline.outerPerimeter()), Area.ofSquareMetres(outline.area()));
    assertThat(factor.areaOverPerimeterInches()).isCloseTo(0.429, withPercentage(0.2));
  }
}
