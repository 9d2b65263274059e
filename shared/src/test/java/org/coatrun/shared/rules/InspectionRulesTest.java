package org.coatrun.shared.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InspectionRulesTest {

  /** IBC 2018 1705.14.4.6 to .9: 9, 7, 12 and 4 at each end of a 12 in length. */
  @Test
  void eachKindHasItsPlaces() {
    assertThat(ReadingPlace.BEAM.atEachEnd()).isEqualTo(9);
    assertThat(ReadingPlace.JOIST_OR_TRUSS.atEachEnd()).isEqualTo(7);
    assertThat(ReadingPlace.W_COLUMN.atEachEnd()).isEqualTo(12);
    assertThat(ReadingPlace.HOLLOW_COLUMN.atEachEnd()).isEqualTo(4);
    assertThat(ReadingPlace.BEAM.readings()).isEqualTo(18);
  }

  /** 100 columns: 25 tested (exam preparation text); 2,350 ft2: 3 groups of 4 (computed). */
  @Test
  void countsFollowTheCode() {
    assertThat(InspectionCount.members(100)).isEqualTo(25);
    assertThat(InspectionCount.members(101)).isEqualTo(26);
    assertThat(InspectionCount.members(0)).isZero();
    assertThat(InspectionCount.readings(Area.ofSquareFeet(2350))).isEqualTo(12);
    assertThat(InspectionCount.readings(Area.ofSquareFeet(1000))).isEqualTo(4);
    assertThat(InspectionCount.samples(Area.ofSquareFeet(2500))).isEqualTo(1);
    assertThat(InspectionCount.samples(Area.ofSquareFeet(2501))).isEqualTo(2);
  }

  /** UFGS 07 81 00 3.4: design - 1/4 in from 1 in up, - 25 % below; 3/4 in gives 0.5625 in. */
  @ParameterizedTest(name = "design {0} in: lowest {1} in")
  @CsvSource({"0.75, 0.5625", "1, 0.75", "1.25, 1.0", "0.5, 0.375"})
  void lowestReadingsFollowTheDesign(double design, double lowest) {
    assertThat(ThicknessJudge.lowestAllowed(Length.ofInches(design)).inches())
        .isCloseTo(lowest, within(1e-12));
  }

  /**
   * Design 1-1/4 in, readings 1.25, 1.60, 1.10, 1.30: 1.60 counts as 1.50 (ASTM E605 8.1), the
   * average is 1.2875 and no reading is under 1.00, so the averaging rule passes; one of four is
   * under the design, so the 10 % rule (IBC 2018 1705.14.4) fails.
   */
  @Test
  void theTwoRulesAreTwoRules() {
    Length design = Length.ofInches(1.25);
    List<Length> readings = inches(1.25, 1.60, 1.10, 1.30);
    ThicknessJudge.Averaging averaging = ThicknessJudge.averaging(design, readings);
    assertThat(averaging.average().inches()).isCloseTo(1.2875, within(1e-12));
    assertThat(averaging.passes()).isTrue();
    assertThat(ThicknessJudge.tenPercent(design, readings))
        .isEqualTo(new ThicknessJudge.TenPercent(1, 4, false));
  }

  @Test
  void theOtherWayRoundTenPercentPassesAndAveragingFails() {
    Length design = Length.ofInches(1);
    double[] values = new double[10];
    Arrays.fill(values, 1.0);
    values[3] = 0.70;
    List<Length> readings = inches(values);
    assertThat(ThicknessJudge.tenPercent(design, readings).passes()).isTrue();
    assertThat(ThicknessJudge.averaging(design, readings).passes()).isFalse();
  }

  @Test
  void readingsAtTheDesignPassBoth() {
    Length design = Length.ofInches(0.4375);
    List<Length> readings = Collections.nCopies(18, Length.ofInches(7.0 / 16));
    assertThat(ThicknessJudge.averaging(design, readings).passes()).isTrue();
    assertThat(ThicknessJudge.tenPercent(design, readings).below()).isZero();
  }

  /** IBC 704.13.3.2: average 80 %, each 50 %. */
  @Test
  void primedSteelIsHeldAgainstBareSteel() {
    Pressure bare = Pressure.ofPsf(300);
    assertThat(PrimedBond.accepted(psf(240, 240, 240), bare)).isTrue();
    assertThat(PrimedBond.accepted(psf(240, 238, 240), bare)).isFalse();
    assertThat(PrimedBond.accepted(psf(300, 300, 149), bare)).isFalse();
    assertThat(PrimedBond.accepted(List.of(), bare)).isFalse();
  }

  private static List<Length> inches(double... values) {
    return Arrays.stream(values).mapToObj(Length::ofInches).toList();
  }

  private static List<Pressure> psf(double... values) {
    return Arrays.stream(values).mapToObj(Pressure::ofPsf).toList();
  }
}
