package org.coatrun.shared.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.coatrun.shared.rules.BeamSubstitution.InHand;
import org.coatrun.shared.rules.BeamSubstitution.Outcome;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.LinearDensity;
import org.coatrun.shared.units.Pressure;
import org.coatrun.shared.units.SectionFactor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThicknessRulesTest {

  private static final FireDuration TWO_HOURS = FireDuration.ofHours(2);

  /** Computed from IBC 722.5.2.2 with W over PA of AISC v15 (regression). */
  @ParameterizedTest(name = "{1} in on {0}-like, W/D2 {4}/{5}: {6} in, rounded {7}")
  @CsvSource({
    "W8x28, 1.000, 28, 34.5, 35, 52.1, 1.1099, 1.1250",
    "W8x28, 1.000, 28, 34.5, 26, 46.7, 1.2203, 1.2500",
    "W8x28, 1.000, 28, 34.5, 14, 34.8, 1.4084, 1.4375",
    "W8x28, 0.500, 28, 34.5, 76, 73.0, 0.4301, 0.4375",
    "W8x28, 0.500, 28, 34.5, 302, 121, 0.3750, 0.3750",
    "W12x26, 1.000, 26, 42.9, 44, 59.3, 0.8987, 0.9375"
  })
  void substitutesBeams(
      String listed, double h1, double w1, double d1, double w2, double d2, double h2, double up) {
    Outcome outcome =
        BeamSubstitution.thickness(
            Length.ofInches(h1), factor(w1, d1), inHand(factor(w2, d2), TWO_HOURS, false, false));
    Length thickness = ((Outcome.Allowed) outcome).thickness();
    assertThat(thickness.inches()).as(listed).isCloseTo(h2, within(0.00006));
    assertThat(Rounding.SIXTEENTH_INCH.up(thickness).inches()).isCloseTo(up, within(1e-9));
  }

  /** IBC 722.5.2.2.1 (1): W8x10 is allowed by AISC's perimeter and not by the sharp one. */
  @Test
  void refusesLightBeamsByLimitOne() {
    Outcome refused = substitute(inHand(wd(0.367), TWO_HOURS, false, false));
    assertThat(((Outcome.Refused) refused).reason())
        .isEqualTo("W/D 0.367 is under 0.37 (IBC 722.5.2.2.1, limit 1)");
    assertThat(substitute(inHand(wd(0.37), TWO_HOURS, false, false)))
        .isInstanceOf(Outcome.Allowed.class);
  }

  /** IBC 722.5.2.2.1 (2): never under 3/8 in; the equation alone gives 0.2280 in here. */
  @Test
  void keepsThreeEighthsByLimitTwo() {
    Outcome.Allowed allowed =
        (Outcome.Allowed)
            BeamSubstitution.thickness(
                Length.ofInches(0.5),
                factor(28, 34.5),
                inHand(factor(302, 121), TWO_HOURS, false, false));
    assertThat(allowed.thickness().inches()).isEqualTo(0.375, within(1e-12));
    assertThat(allowed.formula()).contains("= 0.2280 in").contains("limit 2");
  }

  /** IBC 722.5.2.2.1 (3). */
  @Test
  void refusesRatingsUnderOneHourByLimitThree() {
    FireDuration half = FireDuration.ofMinutes(30);
    assertThat(substitute(inHand(wd(0.8), half, false, false))).isInstanceOf(Outcome.Refused.class);
    FireDuration hour = FireDuration.ofHours(1);
    assertThat(substitute(inHand(wd(0.8), hour, false, false))).isInstanceOf(Outcome.Allowed.class);
  }

  /** IBC 722.5.2.2.1 (4). */
  @Test
  void refusesRestrainedUseOfSectionsThatAreNotCompactByLimitFour() {
    assertThat(substitute(inHand(wd(0.8), TWO_HOURS, true, false)))
        .isInstanceOf(Outcome.Refused.class);
    assertThat(substitute(inHand(wd(0.8), TWO_HOURS, true, true)))
        .isInstanceOf(Outcome.Allowed.class);
  }

  /** IBC 722.5.1.3: R = [C1 (W/D) + C2] h, turned round; invented constants. */
  @Test
  void solvesTheColumnEquationForThickness() {
    ColumnEquation equation = new ColumnEquation(69, 31, 0.33, 6.62);
    Length h = equation.thickness(wd(1.06), TWO_HOURS).orElseThrow();
    assertThat(h.inches()).isCloseTo(120 / (69 * 1.06 + 31), within(1e-9));
    assertThat(equation.rating(wd(1.06), h).orElseThrow().minutes()).isCloseTo(120, within(1e-9));
  }

  /** IBC 722.5.1.3.1: only between the smallest and the largest W/D tested. */
  @Test
  void keepsTheColumnEquationWithinItsTestedRange() {
    ColumnEquation equation = new ColumnEquation(69, 31, 0.33, 6.62);
    assertThat(equation.thickness(wd(0.329), TWO_HOURS)).isEmpty();
    assertThat(equation.thickness(wd(0.33), TWO_HOURS)).isPresent();
    assertThat(equation.thickness(wd(6.63), TWO_HOURS)).isEmpty();
  }

  @Test
  void solvesTheHollowColumnEquation() {
    HollowColumnEquation equation = new HollowColumnEquation(140, 20, 0.2, 1.0);
    SectionFactor factor = SectionFactor.ofAreaOverPerimeterInches(0.422);
    assertThat(equation.thickness(factor, TWO_HOURS).orElseThrow().inches())
        .isCloseTo(100 / (140 * 0.422), within(1e-9));
    assertThat(equation.thickness(SectionFactor.ofAreaOverPerimeterInches(0.19), TWO_HOURS))
        .isEmpty();
  }

  @Test
  void readsTablesInStraightLinesAndNeverBeyond() {
    FactorTable table = new FactorTable(List.of(row(1.0, 1.0), row(0.5, 2.0), row(2.0, 0.5)));
    assertThat(inches(table.at(0.75))).isCloseTo(1.5, within(1e-12));
    assertThat(inches(table.at(1.5))).isCloseTo(0.75, within(1e-12));
    assertThat(inches(table.at(0.5))).isCloseTo(2.0, within(1e-12));
    assertThat(table.at(2.01)).isEqualTo(new FactorTable.Reading.Outside(2.01, row(2.0, 0.5)));
    assertThat(table.at(0.49)).isEqualTo(new FactorTable.Reading.Outside(0.49, row(0.5, 2.0)));
  }

  @Test
  void refusesTablesWithDoubledFactors() {
    assertThatThrownBy(() -> new FactorTable(List.of(row(1, 1), row(1, 2))))
        .hasMessage("two rows for the factor 1");
  }

  @ParameterizedTest(name = "{0} in up to {1} in")
  @CsvSource({"0.5, 0.5", "0.50001, 0.5625", "0.4375000000001, 0.4375", "1.9999, 2.0", "0, 0"})
  void roundsUpToSixteenths(double inches, double up) {
    assertThat(Rounding.SIXTEENTH_INCH.up(Length.ofInches(inches)).inches())
        .isCloseTo(up, within(1e-12));
  }

  @ParameterizedTest(name = "{0} mm up to {1} mm")
  @CsvSource({"12, 12", "12.01, 13", "11.9999999999999, 12"})
  void roundsUpToMillimetres(double mm, double up) {
    assertThat(Rounding.MILLIMETRE.up(Length.ofMillimetres(mm)).millimetres())
        .isCloseTo(up, within(1e-9));
  }

  /**
   * AISC 360 user note F2 (from memory): with Fy = 50 ksi W14x90 and W8x31 have noncompact flanges;
   * W14x82 (bf 10.1, tf 0.855) has not.
   */
  @ParameterizedTest(name = "{0}: compact {5}")
  @CsvSource({
    "W14X90, 14.5, 0.710, 11.4, 0.440, false", "W8X31, 8.00, 0.435, 6.33, 0.285, false",
    "W14X82, 10.1, 0.855, 11.4, 0.510, true", "W18X35, 6.00, 0.425, 16.0, 0.300, true"
  })
  void tellsCompactSections(
      String shape, double bf, double tf, double h, double tw, boolean compact) {
    assertThat(
            Compactness.isCompact(
                Length.ofInches(bf),
                Length.ofInches(tf),
                Length.ofInches(h),
                Length.ofInches(tw),
                Pressure.ofPsi(50_000)))
        .as(shape)
        .isEqualTo(compact);
  }

  private static FactorTable.Row row(double factor, double inches) {
    return new FactorTable.Row(factor, Length.ofInches(inches));
  }

  private static double inches(FactorTable.Reading reading) {
    return ((FactorTable.Reading.Between) reading).thickness().inches();
  }

  private static Outcome substitute(InHand beam) {
    return BeamSubstitution.thickness(Length.ofInches(1), factor(28, 34.5), beam);
  }

  private static InHand inHand(
      SectionFactor factor, FireDuration rating, boolean restrained, boolean compact) {
    return new InHand(factor, rating, restrained, compact);
  }

  private static SectionFactor factor(double pounds, double inches) {
    return SectionFactors.byWeight(LinearDensity.ofPoundsPerFoot(pounds), Length.ofInches(inches));
  }

  private static SectionFactor wd(double value) {
    return SectionFactor.ofWeightOverPerimeter(value);
  }
}
