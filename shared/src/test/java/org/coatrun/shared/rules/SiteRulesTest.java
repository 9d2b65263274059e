package org.coatrun.shared.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.coatrun.shared.units.FlowRate;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Temperature;
import org.coatrun.shared.units.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Water, power, air and cold against published worked examples. */
class SiteRulesTest {

  /** 12 ft x 0.433 = 5.2 psi (teaching text; NRCS and extension services print 0.433 psi/ft). */
  @Test
  void waterLosesPressureAsItRises() {
    assertThat(WaterLine.head(Length.ofFeet(12)).psi()).isCloseTo(5.2, within(0.005));
    assertThat(WaterLine.head(Length.ofFeet(2.31)).psi()).isCloseTo(1.0, within(0.001));
  }

  /** NFPA 13 form; first four computed (regression). 200 gpm, 3.048 in, C 140: 3.842 psi/100 ft. */
  @ParameterizedTest(name = "{0} gpm, {1} in, C {2}: {3} psi/ft")
  @CsvSource({
    "10, 0.75, 140, 0.13908",
    "10, 1, 140, 0.03426",
    "50, 1.61, 120, 0.08800",
    "100, 2.067, 120, 0.09396",
    "200, 3.048, 140, 0.03842"
  })
  void pipesLosePressureByHazenWilliams(double gpm, double inches, double c, double psiPerFoot) {
    assertThat(
            WaterLine.friction(
                    FlowRate.ofGallonsPerMinute(gpm), Length.ofInches(inches), c, Length.ofFeet(1))
                .psi())
        .isCloseTo(psiPerFoot, within(psiPerFoot * 0.0005));
  }

  /**
   * A published example in head form gives 9 ft per 100 ft, 3.900 psi: the forms differ by 1.5 %.
   */
  @Test
  void theTwoFormsOfHazenWilliamsAgreeWithinTwoPerCent() {
    double psi =
        WaterLine.friction(
                FlowRate.ofGallonsPerMinute(200), Length.ofInches(3.048), 140, Length.ofFeet(100))
            .psi();
    assertThat(psi).isCloseTo(9.0 * 0.433, within(0.08));
    assertThat(WaterLine.feetPerSecond(FlowRate.ofGallonsPerMinute(200), Length.ofInches(3.048)))
        .isCloseTo(8.80, within(0.005));
  }

  /** Worked examples of fire service training texts. */
  @ParameterizedTest(name = "{0}, {1} gpm, {2} ft: {3} psi")
  @CsvSource({
    "ONE, 60, 100, 54.0",
    "ONE_AND_THREE_QUARTERS, 150, 200, 69.75",
    "TWO_AND_HALF, 200, 100, 8",
    "TWO_AND_HALF, 100, 300, 6",
    "TWO_AND_HALF, 300, 200, 36"
  })
  void hoseLosesPressureByTheFireServiceRule(HoseSize hose, double gpm, double feet, double psi) {
    assertThat(
            WaterLine.hoseFriction(FlowRate.ofGallonsPerMinute(gpm), hose, Length.ofFeet(feet))
                .psi())
        .isCloseTo(psi, within(1e-9));
  }

  @Test
  void thePumpGivesNozzleLiftAndFriction() {
    assertThat(
            WaterLine.atPump(
                    WaterLine.AT_NOZZLE,
                    Length.ofFeet(100),
                    org.coatrun.shared.units.Pressure.ofPsi(10))
                .psi())
        .isCloseTo(65 + 43.3 + 10, within(1e-9));
  }

  /** Computed from NEC chapter 9 Table 8, 2011 (regression). */
  @ParameterizedTest(name = "{0} V, {1} A, {2} ft, {3} AWG: {4} V, {5} %")
  @CsvSource({
    "480, 40, 200, 8, 10.780, 2.246",
    "208, 100, 200, 1, 5.335, 2.565",
    "480, 60, 300, 6, 15.308, 3.189"
  })
  void feedersLoseVoltage(
      double volts, double amps, double feet, String size, double drop, double percent) {
    Conductor conductor = Conductor.ofSize(size).orElseThrow();
    double lost = VoltageDrop.threePhase(amps, conductor, Length.ofFeet(feet));
    assertThat(lost).isCloseTo(drop, within(0.001));
    assertThat(VoltageDrop.percent(lost, volts)).isCloseTo(percent, within(0.001));
  }

  /** The circular-mil form of electricians' texts; NEC Table 9 in steel conduit at pf 0.85, 0.8. */
  @Test
  void otherFormsOfVoltageDropAgreeWithTheirRegressionValues() {
    Length run = Length.ofFeet(200);
    assertThat(VoltageDrop.threePhaseByMils(40, Conductor.AWG_8, run))
        .isCloseTo(10.827, within(0.001));
    assertThat(VoltageDrop.threePhase(40, 0.78, 0.065, 0.85, run)).isCloseTo(9.661, within(0.001));
    assertThat(VoltageDrop.threePhase(40, 0.78, 0.065, VoltageDrop.POWER_FACTOR, run))
        .isCloseTo(9.187, within(0.001));
  }

  /**
   * TxDOT electrical manual: 200 ft of 8 AWG (0.764 solid gives 0.001308 loop with others), 1.04 A.
   */
  @Test
  void singlePhaseRunsCountOutAndBack() {
    assertThat(VoltageDrop.singlePhase(1.04, Conductor.AWG_8, Length.ofFeet(200)))
        .isCloseTo(2 * 1.04 * 0.778 * 0.2, within(1e-9));
  }

  /** 1,000 ft3 at 500 CFM is 30 changes an hour (published); the hall is a regression value. */
  @Test
  void airChangesFollowVolumeAndFan() {
    assertThat(
            Ventilation.changesPerHour(
                Volume.ofCubicFeet(1000), FlowRate.ofCubicFeetPerMinute(500)))
        .isCloseTo(30, within(1e-9));
    assertThat(Ventilation.fan(Volume.ofCubicFeet(120 * 80 * 14), 4).cubicFeetPerMinute())
        .isCloseTo(8960, within(1e-6));
  }

  /** 150, 430, 1,000 psf: IBC 1705.15 and Table 403.2.4. */
  @ParameterizedTest(name = "highest floor {0} ft, building {1} ft: {2} psf")
  @CsvSource({"75, 90, 150", "75.1, 90, 430", "400, 420, 430", "400, 421, 1000"})
  void bondGrowsWithTheBuilding(double floor, double height, double psf) {
    assertThat(BondStrength.least(Length.ofFeet(floor), Length.ofFeet(height)).psf())
        .isCloseTo(psf, within(1e-9));
  }

  /** 40 F before, during and 24 h after (common practice). */
  @Test
  void coldSpoilsADayBeforeDuringAndAfter() {
    LocalDateTime start = LocalDateTime.of(2026, 3, 10, 7, 0);
    LocalDateTime end = start.plusHours(8);
    assertThat(ColdRule.USUAL.judge(start, end, record(start, 50, 4)))
        .isInstanceOf(ColdRule.Judgement.Warm.class);
    NavigableMap<LocalDateTime, Temperature> night = record(start, 50, 4);
    night.put(end.plusHours(20), Temperature.ofFahrenheit(39));
    assertThat(ColdRule.USUAL.judge(start, end, night))
        .isEqualTo(new ColdRule.Judgement.Cold(end.plusHours(20), Temperature.ofFahrenheit(39)));
    assertThat(ColdRule.USUAL.judge(start, end, record(start, 50, 1)))
        .isInstanceOf(ColdRule.Judgement.Unknown.class);
  }

  private static NavigableMap<LocalDateTime, Temperature> record(
      LocalDateTime start, double fahrenheit, int days) {
    NavigableMap<LocalDateTime, Temperature> record = new TreeMap<>();
    for (int hour = 0; hour <= days * 24; hour++) {
      record.put(start.minusDays(1).plusHours(hour), Temperature.ofFahrenheit(fahrenheit));
    }
    return record;
  }
}
