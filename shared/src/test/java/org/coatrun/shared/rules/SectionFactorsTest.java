package org.coatrun.shared.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.LinearDensity;
import org.coatrun.shared.units.SectionFactor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published W/D, A/P and Am/V against the formulas, with dimensions of AISC v15 and EN tables. */
class SectionFactorsTest {

  /** AISC v15 columns PA and PB; fillet radius kdes - tf. */
  @ParameterizedTest(name = "{0}: PB {6} in, PA {7} in")
  @CsvSource({
    "W8X28, 8.06, 6.54, 0.285, 0.465, 0.859, 41.0, 34.5",
    "W10X49, 10.0, 10.0, 0.340, 0.560, 1.06, 58.5, 48.5",
    "W16X26, 15.7, 5.50, 0.250, 0.345, 0.747, 52.2, 46.7",
    "W18X35, 17.7, 6.00, 0.300, 0.425, 0.827, 58.1, 52.1",
    "W24X76, 23.9, 8.99, 0.440, 0.680, 1.18, 82.0, 73.0"
  })
  void contoursWithFilletsFollowAisc(
      String shape, double d, double bf, double tw, double tf, double k, double pb, double pa) {
    Length saving = SectionFactors.filletSaving(Length.ofInches(k - tf));
    Length depth = Length.ofInches(d);
    Length flange = Length.ofInches(bf);
    Length web = Length.ofInches(tw);
    assertThat(SectionFactors.contourFourSided(depth, flange, web).minus(saving).inches())
        .as(shape)
        .isCloseTo(pb, within(pb * 0.0047));
    assertThat(SectionFactors.contourThreeSided(depth, flange, web).minus(saving).inches())
        .as(shape)
        .isCloseTo(pa, within(pa * 0.0047));
  }

  /** Computed from AISC v15 (regression). */
  @ParameterizedTest(name = "{0}: three-sided W/D sharp {5}, box {6}")
  @CsvSource({
    "W8x28, 28, 8.06, 6.54, 0.285, 0.796, 1.233",
    "W12x14, 14, 11.9, 3.97, 0.200, 0.397, 0.504",
    "W16x26, 26, 15.7, 5.50, 0.250, 0.548, 0.705",
    "W18x35, 35, 17.7, 6.00, 0.300, 0.663, 0.845",
    "W21x44, 44, 20.7, 6.50, 0.350, 0.731, 0.919",
    "W24x76, 76, 23.9, 8.99, 0.440, 1.029, 1.338",
    "W36x302, 302, 37.3, 16.7, 0.945, 2.459, 3.308"
  })
  void beamsUnderDeckLoseOneFlangeFace(
      String shape, double w, double d, double bf, double tw, double contour, double box) {
    Length depth = Length.ofInches(d);
    Length flange = Length.ofInches(bf);
    assertThat(wd(w, SectionFactors.contourThreeSided(depth, flange, Length.ofInches(tw))))
        .as(shape)
        .isCloseTo(contour, within(0.0006));
    assertThat(wd(w, SectionFactors.boxThreeSided(depth, flange)))
        .as(shape)
        .isCloseTo(box, within(0.003)); // PC is printed to 0.1 in
  }

  /**
   * The lightest two W shapes: over the 0.37 of IBC 722.5.2.2.1 (1) by the printed PA, under it
   * with sharp corners (computed from AISC v15, regression).
   */
  @ParameterizedTest(name = "{0}: W/PA {5}, sharp {6}")
  @CsvSource({
    "W8x10, 10, 7.89, 3.94, 0.170, 26.8, 0.373, 0.367",
    "W6x8.5, 8.5, 5.83, 3.94, 0.170, 22.8, 0.373, 0.367"
  })
  void theContourDecidesWhetherTheLightestBeamsMaySubstitute(
      String shape,
      double w,
      double d,
      double bf,
      double tw,
      double pa,
      double printed,
      double sharp) {
    Length contour =
        SectionFactors.contourThreeSided(
            Length.ofInches(d), Length.ofInches(bf), Length.ofInches(tw));
    assertThat(wd(w, Length.ofInches(pa))).as(shape).isCloseTo(printed, within(0.0005));
    assertThat(wd(w, contour)).as(shape).isCloseTo(sharp, within(0.0006));
  }

  /** A/P of hollow sections: AISC v15 areas over computed perimeters. */
  @ParameterizedTest(name = "A/P of {0}: {3} in")
  @CsvSource({
    "HSS8X8X1/2, 13.5, 32.0, 0.422",
    "HSS8X8X1/2 rounded, 13.5, 30.40, 0.444",
    "HSS8X4X3/8, 7.58, 24.0, 0.316",
    "HSS8X4X3/8 rounded, 7.58, 22.80, 0.332",
    "HSS6.000X0.500, 8.09, 18.85, 0.429"
  })
  void hollowSectionsGoByAreaOverPerimeter(String shape, double area, double p, double ap) {
    SectionFactor factor = SectionFactors.byArea(Area.ofSquareInches(area), Length.ofInches(p));
    assertThat(factor.areaOverPerimeterInches()).as(shape).isCloseTo(ap, within(0.0006));
  }

  /** Am/V by EN 1993-1-2 from perimeters and areas of EN section tables (computed). */
  @ParameterizedTest(name = "Am/V of {0}: {3} 1/m")
  @CsvSource({
    "IPE300, 1.160, 53.81, 215.6",
    "HEA200, 1.136, 53.83, 211.0",
    "HEB300, 1.732, 149.08, 116.2"
  })
  void europeanSectionsGoByAmV(String shape, double metres, double cm2, double amV) {
    SectionFactor factor =
        SectionFactors.byArea(Area.ofSquareMetres(cm2 * 1e-4), Length.ofMetres(metres));
    assertThat(factor.perMetre()).as(shape).isCloseTo(amV, within(0.06));
  }

  /** 133.97 over W/D at 490 lb/ft3 (geometry); 1 lb/ft/in = 0.059 kg/m/mm (IBC 722.5.1(1) note). */
  @Test
  void formsOfTheFactorTurnIntoEachOther() {
    assertThat(SectionFactor.ofWeightOverPerimeter(1).perMetre()).isCloseTo(133.97, within(0.05));
    assertThat(LinearDensity.ofPoundsPerFoot(1).kilogramsPerMetre() / 25.4)
        .isCloseTo(0.059, within(0.0005));
  }

  private static double wd(double pounds, Length perimeter) {
    return SectionFactors.byWeight(LinearDensity.ofPoundsPerFoot(pounds), perimeter)
        .weightOverPerimeter();
  }
}
