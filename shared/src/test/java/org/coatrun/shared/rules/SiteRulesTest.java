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
   * A published example in head form gives 9 ft per 100 ft, 3.900 psi, and 2.7 ft in 30 ft: the
   * forms differ by 1.5 % (Engineering Toolbox).
   */
  @Test
  void theTwoFormsOfHazenWilliamsAgreeWithinTwoPerCent() {
    double psi =
        WaterLine.friction(
                FlowRate.ofGallonsPerMinute(200), Length.ofInches(3.048), 140, Length.ofFeet(100))
            .psi();
    assertThat(psi).isCloseTo(9.0 * 0.433, within(0.08));
    assertThat(psi * 0.3 / 0.433).isCloseTo(2.7, within(0.05));
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

  /** Coefficients of fire service texts. */
  @ParameterizedTest(name = "{0}: C {1}")
  @CsvSource({
    "3/4 in, 1100",
    "1 in, 150",
    "1-1/4 in, 80",
    "1-1/2 in, 24",
    "1-3/4 in, 15.5",
    "2 in, 8",
    "2-1/2 in, 2",
    "3 in, 0.677",
    "4 in, 0.2",
    "5 in, 0.08"
  })
  void hosesHaveTheCoefficientsOfTheFireService(String size, double c) {
    assertThat(HoseSize.values())
        .filteredOn(h -> h.word().equals(size))
        .singleElement()
        .satisfies(h -> assertThat(h.coefficient()).isEqualTo(c));
  }

  /** 65 psi at the nozzle: common practice. */
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

  /** NEC chapter 9 Table 8, 2011: stranded copper, ohms per 1,000 ft at 75 C, circular mils. */
  @ParameterizedTest(name = "{0}: {1} ohm, {2} CM")
  @CsvSource({
    "14, 3.14, 4110",
    "12, 1.98, 6530",
    "10, 1.24, 10380",
    "8, 0.778, 16510",
    "6, 0.491, 26240",
    "4, 0.308, 41740",
    "2, 0.194, 66360",
    "1, 0.154, 83690",
    "1/0, 0.122, 105600"
  })
  void conductorsResistAsTable8Says(String size, double ohms, double mils) {
    Conductor conductor = Conductor.ofSize(size).orElseThrow();
    assertThat(conductor.ohmsPerThousandFeet()).isEqualTo(ohms);
    assertThat(conductor.circularMils()).isEqualTo(mils);
  }

  /** The same table, sizes whose circular mils were not seen. */
  @ParameterizedTest(name = "{0}: {1} ohm")
  @CsvSource({
    "3, 0.245",
    "2/0, 0.0967",
    "3/0, 0.0766",
    "4/0, 0.0608",
    "250, 0.0515",
    "500, 0.0258"
  })
  void largerConductorsResistAsTable8Says(String size, double ohms) {
    Conductor conductor = Conductor.ofSize(size).orElseThrow();
    assertThat(conductor.ohmsPerThousandFeet()).isEqualTo(ohms);
    // Copper at 75 C: 12.9 ohms for a foot of one circular mil (electricians' texts), within 1.5 %.
    assertThat(ohms * conductor.circularMils() / 1000).isCloseTo(12.9, within(0.2));
  }

  /** Guidance of the notes to NEC 210.19 and 215.2: 3 % on a branch, 5 % in all. */
  @Test
  void aFeederMayLoseThreePerCentOnABranchAndFiveInAll() {
    assertThat(VoltageDrop.BRANCH_PERCENT).isEqualTo(3);
    assertThat(VoltageDrop.TOTAL_PERCENT).isEqualTo(5);
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
   * TxDOT electrical manual: 200 ft of 8 AWG at 1.04 A, 0.001308 ohms a foot out and back, lose
   * 0.272 V (its result computed from its numbers). Its conductor is colder than that of Table 8.
   */
  @Test
  void singlePhaseRunsCountOutAndBack() {
    double warm = VoltageDrop.singlePhase(1.04, Conductor.AWG_8, Length.ofFeet(200));
    double loop = 2 * Conductor.AWG_8.ohmsPerThousandFeet() / 1000;
    assertThat(warm * 0.001308 / loop).isCloseTo(0.272, within(0.0005));
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
