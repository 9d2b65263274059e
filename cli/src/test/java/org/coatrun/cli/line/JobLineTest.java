package org.coatrun.cli.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.coatrun.cli.console.CommandFailure;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.line.FloorOutline;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.line.SlabOpening;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the job file says reaches the request, in the axes of the floors. */
class JobLineTest {

  private static final double EXACT = 1e-9;
  private static final Vec3 ORIGIN = new Vec3(1000, 2000, 0);

  private static final String SITE =
      """
      site:
        access-sides: [east]
        positions: 2
        machine-spots:
          - {name: yard, at: [1012 m, 2005 m], storey: level 1}
        risers:
          - {name: mast, at: [1030 m, 2010 m], from: Level 1, to: Level 2}
        keep-outs:
          - {name: switchgear, zone: [[1001 m, 2001 m], [1003 m, 2001 m], [1003 m, 2004 m]]}
      line: {flexible-hose: 200 ft, hose-rise: 30 ft, hose-storeys: 2, whip: 20 ft, slack: 4 %}
      water: {at-nozzle: 70 psi, supply-pressure: 55 psi, at: [1001 m, 2001 m]}
      power: {amperes: 45 A, limit: 5 %, run: 120 ft}
      air: {changes: 6}
      machine: {rate: 25 bags/h, lift-rating: 200 ft}
      """;

  @Test
  void theJobsNumbersReachTheRequest() throws CommandFailure {
    LineRequest r = request(SITE);
    assertThat(r.limits().flexible().feet()).isCloseTo(200, within(EXACT));
    assertThat(r.limits().hoseRise().feet()).isCloseTo(30, within(EXACT));
    assertThat(r.limits().hoseStoreys()).isEqualTo(2);
    assertThat(r.limits().whip().feet()).isCloseTo(20, within(EXACT));
    assertThat(r.limits().slack()).isCloseTo(0.04, within(EXACT));
    assertThat(r.limits().machineLift().orElseThrow().feet()).isCloseTo(200, within(EXACT));
    assertThat(r.mostMachines()).isEqualTo(2);
    assertThat(r.utilities().nozzle().psi()).isCloseTo(70, within(EXACT));
    assertThat(r.utilities().supply().orElseThrow().psi()).isCloseTo(55, within(EXACT));
    assertThat(r.utilities().feederPercent()).isCloseTo(5, within(EXACT));
    assertThat(r.utilities().feederRun().orElseThrow().feet()).isCloseTo(120, within(EXACT));
    assertThat(r.utilities().airChanges()).isEqualTo(6);
    // 25 bags/h of 50 lb at 1.2 : 1 by weight are 1,500 lb/h of water, 8.34 lb a gallon
    assertThat(r.utilities().waterFlow().gallonsPerMinute())
        .isCloseTo(25 * 50 * 1.2 / 8.34 / 60, within(1e-9));
  }

  @Test
  void placesAreCarriedToTheAxesOfTheFloors() throws CommandFailure {
    LineRequest r = request(SITE);
    assertThat(r.spots()).hasSize(1);
    assertThat(r.spots().get(0).at()).isEqualTo(new Vec2(12, 5));
    assertThat(r.spots().get(0).floor()).isZero();
    assertThat(r.risers().get(0).at()).isEqualTo(new Vec2(30, 10));
    assertThat(r.risers().get(0).highest()).isEqualTo(1);
    assertThat(r.site().water().orElseThrow()).isEqualTo(new Vec2(1, 1));
    assertThat(r.keepOuts()).hasSize(2);
    assertThat(r.keepOuts().get(0).region().area()).isCloseTo(3, within(EXACT));
    assertThat(r.site().truckAccess()).isNotEmpty().allMatch(p -> p.x() > 30);
  }

  /** Limits and reach that a job leaves alone: common practice. */
  @Test
  void aJobThatStatesNothingHasTheTradesLimits() throws CommandFailure {
    LineRequest r = request("");
    assertThat(r.limits().flexible().feet()).isCloseTo(250, within(EXACT));
    assertThat(r.limits().hoseRise().feet()).isCloseTo(36, within(EXACT));
    assertThat(r.limits().hoseStoreys()).isEqualTo(3);
    assertThat(r.limits().whip().feet()).isCloseTo(25, within(EXACT));
    assertThat(r.reach().poleGun().feet()).isCloseTo(12, within(EXACT));
    assertThat(r.utilities().airChanges()).isEqualTo(4);
    assertThat(r.utilities().nozzle().psi()).isCloseTo(65, within(EXACT));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "site: {machine-spots: [{name: a, at: [1 m, 1 m], storey: Attic}]} | machine spot a names storey 'Attic'",
        "site: {risers: [{name: b, at: [1 m, 1 m], to: Attic}]} | riser b names storey 'Attic'",
        "site: {risers: [{name: b, at: [1 m, 1 m], from: Level 2, to: Level 1}]} | ends below the storey"
      })
  void aStoreyWithoutAFloorIsOneSentence(String yaml, String sentence) {
    assertThatThrownBy(() -> request(yaml))
        .isInstanceOf(CommandFailure.class)
        .hasMessageContaining(sentence);
  }

  private static LineRequest request(String yaml) throws CommandFailure {
    Job job = Job.parse("job.yaml", yaml);
    return JobLine.request(
        job, ORIGIN, List.of(floor("Level 1", 0), floor("Level 2", 4)), List.of());
  }

  private static FloorOutline floor(String name, double z) {
    return new FloorOutline(
        name,
        Length.ofMetres(z),
        Length.ofMetres(3.8),
        List.of(Region.rectangle(0, 0, 30, 20)),
        List.of(),
        List.of(),
        List.<SlabOpening>of(),
        List.of());
  }
}
