package org.coatrun.shared.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.LinearDensity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * W/D of wide-flange columns as codes print them. Three contours are in print for one shape: sharp
 * corners (780 CMR Table 721.5.1(1)), root fillets of k1 - tw/2 (current IBC Table 722.5.1(1)), and
 * root fillets of kdes - tf (AISC Shapes Database v15.0, column PB). Dimensions are that
 * database's.
 */
class PublishedColumnsTest {

  @ParameterizedTest(name = "{0}: {8} sharp, {9} by k1, box {10}, {11} by kdes")
  @CsvSource({
    "W14x233, 233, 16, 15.9, 1.07, 1.72, 2.32, 1.75, 2.49, 2.55, 3.65, 2.522",
    "W14x120, 120, 14.5, 14.7, 0.59, 0.94, 1.54, 1.5, 1.39, 1.42, 2.06, 1.402",
    "W14x90, 90, 14, 14.5, 0.44, 0.71, 1.31, 1.4375, 1.06, 1.08, 1.58, 1.070",
    "W14x61, 61, 13.9, 10, 0.375, 0.645, 1.24, 1, 0.91, 0.928, 1.28, 0.924",
    "W14x43, 43, 13.7, 8, 0.305, 0.53, 1.12, 1, 0.73, 0.752, 0.99, 0.744",
    "W12x190, 190, 14.4, 12.7, 1.06, 1.74, 2.33, 1.375, 2.46, 2.50, 3.51, 2.484",
    "W12x106, 106, 12.9, 12.2, 0.61, 0.99, 1.59, 1.125, 1.44, 1.47, 2.11, 1.464",
    "W12x72, 72, 12.3, 12, 0.43, 0.67, 1.27, 1.0625, 1.00, 1.02, 1.48, 1.018",
    "W12x40, 40, 11.9, 8.01, 0.295, 0.515, 1.02, 0.875, , 0.734, 1.00, 0.735",
    "W10x112, 112, 11.4, 10.4, 0.755, 1.25, 1.75, 1, 1.78, 1.81, 2.57, 1.806",
    "W10x49, 49, 10, 10, 0.34, 0.56, 1.06, 0.8125, 0.83, 0.84, 1.23, 0.838",
    "W10x33, 33, 9.73, 7.96, 0.29, 0.435, 0.935, 0.75, 0.65, 0.661, 0.93, 0.661",
    "W8x67, 67, 9, 8.28, 0.57, 0.935, 1.33, 0.9375, 1.34, 1.37, 1.94, 1.359",
    "W8x31, 31, 8, 8, 0.285, 0.435, 0.829, 0.75, 0.65, 0.665, 0.97, 0.662",
    "W8x28, 28, 8.06, 6.54, 0.285, 0.465, 0.859, 0.625, 0.67, 0.688, 0.96, 0.683",
    "W6x20, 20, 6.2, 6.02, 0.26, 0.365, 0.615, 0.5625, 0.56, 0.563, 0.82, 0.563",
    "W6x9, 9, 5.9, 3.94, 0.17, 0.215, 0.465, 0.5, 0.33, 0.338, 0.46, 0.336",
    "W5x16, 16, 5.01, 5, 0.24, 0.36, 0.66, 0.4375, , 0.55, 0.80, 0.552",
    "W4x13, 13, 4.16, 4.06, 0.28, 0.345, 0.595, 0.5, , 0.556, 0.79, 0.551"
  })
  void eachTableFollowsItsContour(
      String shape,
      double w,
      double d,
      double bf,
      double tw,
      double tf,
      double kdes,
      double k1,
      Double sharp,
      double current,
      double box,
      double aisc) {
    Length around =
        SectionFactors.contourFourSided(
            Length.ofInches(d), Length.ofInches(bf), Length.ofInches(tw));
    Length boxed = SectionFactors.boxFourSided(Length.ofInches(d), Length.ofInches(bf));
    if (sharp != null) { // two rows cannot be read in the copy that was seen
      assertThat(wd(w, around)).as(shape).isCloseTo(sharp, within(0.008));
    }
    assertThat(wd(w, filleted(around, k1 - tw / 2)))
        .as(shape)
        .isCloseTo(current, within(0.0093 * current));
    assertThat(wd(w, boxed)).as(shape).isCloseTo(box, within(0.01));
    // W/PB is computed from the printed PB, which is rounded to a tenth of an inch
    assertThat(wd(w, filleted(around, kdes - tf))).as(shape).isCloseTo(aisc, within(0.0047 * aisc));
    assertThat(wd(w, around)).isLessThan(wd(w, filleted(around, kdes - tf)));
  }

  private static Length filleted(Length contour, double radius) {
    return contour.minus(SectionFactors.filletSaving(Length.ofInches(radius)));
  }

  private static double wd(double pounds, Length perimeter) {
    return SectionFactors.byWeight(LinearDensity.ofPoundsPerFoot(pounds), perimeter)
        .weightOverPerimeter();
  }
}
