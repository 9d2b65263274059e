package org.coatrun.routing.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.coatrun.shared.finding.LineFinding;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.LineLimits;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.NoRoute;
import org.coatrun.shared.line.Riser;
import org.coatrun.shared.line.RiserUse;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.Length;
import org.junit.jupiter.api.Test;

class LinePlannerTest {

  private static final MachineSpot SPOT = new MachineSpot("dock", 0, new Vec2(5, 20), 0, List.of());

  @Test
  void everyPlaceOfWorkIsReachedOrNamed() {
    LinePlan plan = LinePlanner.plan(request(4, 12, 40));
    assertThat(plan.cells()).isNotEmpty();
    assertThat(plan.routes()).allMatch(r -> r instanceof Route);
    double sprayed =
        plan.floors().stream()
            .flatMap(f -> f.setUps().stream())
            .mapToDouble(s -> s.coating().cubicMetres())
            .sum();
    double asked =
        Towers.of(4, 12 * 0.3048, 40, 9).work().stream()
            .mapToDouble(w -> w.coating().cubicMetres())
            .sum();
    assertThat(sprayed).isCloseTo(asked, within(1e-6));
    assertThat(plan.proof().optimal()).isTrue();
    assertThat(plan.proof().gap()).isZero();
  }

  @Test
  void everyRouteKeepsTheLimitsAndEndsInAWhip() {
    LineRequest request = request(5, 14, 50);
    LinePlan plan = LinePlanner.plan(request);
    for (int c = 0; c < plan.cells().size(); c++) {
      Route route = (Route) plan.routes().get(c);
      assertThat(request.limits().flexibleAllowed(route.flexible())).isTrue();
      // Common practice: a whip of 25 ft at most.
      assertThat(route.legs().get(route.legs().size() - 1).laid().feet())
          .isCloseTo(25, within(1e-9));
      Length rise = request.floors().get(plan.cells().get(c).floor()).elevation();
      assertThat(route.rise().metres()).isCloseTo(rise.metres(), within(1e-9));
      for (int k = 1; k < route.legs().size(); k++) {
        Vec2 end = last(route.legs().get(k - 1).path());
        assertThat(end.distance(route.legs().get(k).path().get(0))).isLessThan(0.01);
      }
    }
  }

  /** Common practice: standpipe beyond 36 ft of rise or three storeys, not at them. */
  @Test
  void hoseMayRiseThirtySixFeetAndThreeStoreysAndNotAHairMore() {
    LineLimits limits = LineLimits.commonPractice();
    assertThat(limits.hoseMayRise(Length.ofFeet(36), 3)).isTrue();
    assertThat(limits.hoseMayRise(Length.ofFeet(36.001), 3)).isFalse();
    assertThat(limits.hoseMayRise(Length.ofFeet(30), 4)).isFalse();
    assertThat(limits.flexibleAllowed(Length.ofFeet(250))).isTrue();
    assertThat(limits.flexibleAllowed(Length.ofFeet(250.001))).isFalse();
  }

  /** Common practice, as above, in whole plans: three storeys of 12.0 ft, then a hair more. */
  @Test
  void thePlanAsksForStandpipeOnlyBeyondTheLimits() {
    FloorPlan at = top(LinePlanner.plan(request(4, 12, 40)));
    assertThat(at.check().orElseThrow().rise().feet()).isCloseTo(36, within(1e-9));
    assertThat(at.check().orElseThrow().standpipe()).isEmpty();
    FloorPlan over = top(LinePlanner.plan(request(4, 12.001, 40)));
    assertThat(over.check().orElseThrow().standpipe())
        .hasSize(1)
        .first()
        .asString()
        .contains("36.0 ft");
    FloorPlan fifth = top(LinePlanner.plan(request(5, 9, 40)));
    assertThat(fifth.check().orElseThrow().standpipe())
        .containsExactly("4 storeys are more than 3");
    assertThat(LinePlanner.plan(request(5, 9, 40)).risers())
        .filteredOn(r -> r.to() == 4)
        .allMatch(RiserUse::standpipe);
  }

  @Test
  void tooLittleHoseNamesTheLimitAndByHowMuch() {
    LineRequest request =
        request(1, 12, 40).withLimits(LineLimits.commonPractice().withFlexible(Length.ofFeet(26)));
    LinePlan plan = LinePlanner.plan(request);
    List<NoRoute> none =
        plan.routes().stream().filter(NoRoute.class::isInstance).map(NoRoute.class::cast).toList();
    assertThat(none).isNotEmpty();
    assertThat(none)
        .allMatch(n -> n.limit() == NoRoute.Limit.FLEXIBLE_HOSE && n.over().metres() > 0);
    assertThat(plan.findings()).anyMatch(f -> f.code() == LineFinding.OUT_OF_LINE);
  }

  @Test
  void floorsWithoutARiserAreNamed() {
    LinePlan plan = LinePlanner.plan(request(2, 12, 40).withRisers(List.of(), false));
    assertThat(plan.routes())
        .filteredOn(NoRoute.class::isInstance)
        .isNotEmpty()
        .allMatch(r -> ((NoRoute) r).limit() == NoRoute.Limit.NO_RISER);
  }

  @Test
  void aMachineThatCannotLiftSoHighGivesWayToOneHigherUp() {
    LineLimits weak = LineLimits.commonPractice().withMachineLift(Length.ofFeet(50));
    LineRequest one = request(8, 12, 40).withLimits(weak);
    LinePlan alone = LinePlanner.plan(one);
    assertThat(alone.routes())
        .filteredOn(NoRoute.class::isInstance)
        .isNotEmpty()
        .allMatch(r -> ((NoRoute) r).limit() == NoRoute.Limit.MACHINE_LIFT);
    var upper = new MachineSpot("level 5", 4, new Vec2(5, 20), 500, List.of());
    LinePlan both = LinePlanner.plan(one.withSpots(List.of(SPOT, upper), 2));
    assertThat(both.routes()).allMatch(Route.class::isInstance);
    assertThat(both.machines()).extracting(MachineSpot::name).contains("level 5");
  }

  @Test
  void spotsAreFoundAndComparedCheapestFirst() {
    LinePlan plan = LinePlanner.plan(request(3, 12, 40).withSpots(List.of(), 1));
    assertThat(plan.comparison()).hasSize(5);
    assertThat(plan.comparison().get(0).cost()).isCloseTo(plan.proof().cost(), within(1e-6));
    for (int i = 1; i < 5; i++) {
      assertThat(plan.comparison().get(i).cost())
          .isGreaterThanOrEqualTo(plan.comparison().get(i - 1).cost());
    }
  }

  /** A search that may look at one part only stops before its plan is proven best. */
  @Test
  void aSearchThatStopsEarlySaysSoAndByHowMuch() {
    LineRequest r = request(5, 14, 60).withSpots(List.of(), 2);
    LinePlan plan =
        LinePlanner.plan(
            new LineRequest(
                r.floors(),
                r.keepOuts(),
                r.risers(),
                r.findRisers(),
                r.work(),
                r.spots(),
                r.machineFloor(),
                r.site(),
                r.limits(),
                r.reach(),
                r.costs(),
                r.stock(),
                r.utilities(),
                r.mostMachines(),
                1,
                r.wording()));
    assertThat(plan.proof().gap()).isPositive();
    assertThat(plan.findings())
        .filteredOn(f -> f.code() == LineFinding.NOT_PROVEN_BEST)
        .singleElement()
        .satisfies(f -> assertThat(f.sentence()).startsWith("Stopped after"));
  }

  @Test
  void outletsOfAFloorAreWorkedFromTheFarthestCellBack() {
    LinePlan plan = LinePlanner.plan(request(3, 12, 50));
    for (FloorPlan floor : plan.floors()) {
      for (SetUp s : floor.setUps()) {
        double before = Double.POSITIVE_INFINITY;
        for (int c : s.cells()) {
          double hose = ((Route) plan.routes().get(c)).flexible().metres();
          assertThat(hose).isLessThanOrEqualTo(before + 1e-9);
          before = hose;
        }
      }
    }
    assertThat(plan.moves()).extracting(m -> m.number()).startsWith(1, 2, 3);
    assertThat(plan.hardware()).isNotEmpty();
  }

  @Test
  void theSameRequestGivesTheSamePlan() {
    assertThat(LinePlanner.plan(request(4, 12, 40)))
        .isEqualTo(LinePlanner.plan(request(4, 12, 40)));
  }

  @Test
  void withoutFloorsOrWorkThereIsAnEmptyPlan() {
    assertThat(LinePlanner.plan(LineRequest.of(List.of(), List.of())).routes()).isEmpty();
    LinePlan idle = LinePlanner.plan(LineRequest.of(Towers.of(1, 4, 30, 9).floors(), List.of()));
    assertThat(idle.cells()).isEmpty();
  }

  @Test
  void aRiserOfTheJobFileIsUsed() {
    var hoist = new Riser("hoist", Riser.Kind.CHASE, new Vec2(3, 3), 0, 2);
    LinePlan plan = LinePlanner.plan(request(3, 12, 40).withRisers(List.of(hoist), false));
    assertThat(plan.risers()).isNotEmpty().allMatch(r -> r.riser().name().equals("hoist"));
  }

  /** 200 ft level, 60 ft of rise, three bends: sources at {@link EquivalentLengths}. */
  @Test
  void equivalentLengthsByBothPublishedRules() {
    Length level = Length.ofFeet(200);
    Length rise = Length.ofFeet(60);
    assertThat(
            EquivalentLengths.byBends(level.plus(rise), Length.ZERO, 3, Length.ofInches(3)).feet())
        .isCloseTo(320, within(1e-9));
    assertThat(
            EquivalentLengths.byBends(Length.ZERO, level.plus(rise), 3, Length.ofInches(3)).feet())
        .isCloseTo(1360, within(1e-9));
    assertThat(EquivalentLengths.quick(level, rise, 3).feet()).isCloseTo(369, within(0.5));
  }

  private static Vec2 last(List<Vec2> path) {
    return path.get(path.size() - 1);
  }

  private static FloorPlan top(LinePlan plan) {
    return plan.floors().get(plan.floors().size() - 1);
  }

  private static LineRequest request(int storeys, double heightFeet, double side) {
    Towers tower = Towers.of(storeys, heightFeet * 0.3048, side, 9);
    return LineRequest.of(tower.floors(), tower.work()).withSpots(List.of(SPOT), 1);
  }
}
