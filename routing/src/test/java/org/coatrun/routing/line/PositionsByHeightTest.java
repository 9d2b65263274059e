package org.coatrun.routing.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.coatrun.shared.line.LineLimits;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Move;
import org.coatrun.shared.line.NoRoute;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.units.Length;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A machine that lifts 50 ft, in a tower of eight storeys of 12 ft; no spot is named. */
class PositionsByHeightTest {

  private static LinePlan one;
  private static LinePlan two;

  @BeforeAll
  static void plan() {
    Towers tower = Towers.of(8, 12 * 0.3048, 40, 9);
    LineRequest request =
        LineRequest.of(tower.floors(), tower.work())
            .withLimits(LineLimits.commonPractice().withMachineLift(Length.ofFeet(50)));
    one = LinePlanner.plan(request);
    two = LinePlanner.plan(request.withSpots(List.of(), 2));
  }

  /** The sixth floor lies 60 ft up, 10 ft over the rating, and each one above 12 ft more. */
  @Test
  void oneMachineLeavesTheFloorsThatItCannotLiftToWithTheReason() {
    assertThat(one.machines()).hasSize(1);
    for (int c = 0; c < one.cells().size(); c++) {
      int floor = one.cells().get(c).floor();
      if (one.routes().get(c) instanceof NoRoute none) {
        assertThat(floor).isGreaterThanOrEqualTo(5);
        assertThat(none.limit()).isEqualTo(NoRoute.Limit.MACHINE_LIFT);
        assertThat(none.over().feet()).isCloseTo(12 * floor - 50, within(1e-6));
      } else {
        assertThat(floor).isLessThan(5);
      }
    }
  }

  @Test
  void twoPositionsReachAllAndTheUpperOneStandsWhereTheLowerCannotLift() {
    assertThat(two.routes()).allMatch(Route.class::isInstance);
    assertThat(two.machines()).extracting(MachineSpot::floor).containsExactlyInAnyOrder(0, 5);
    assertThat(upper().needs()).contains("a hoist that brings the bags up to Level 6");
    assertThat(upper().extraCost()).isGreaterThan(0);
  }

  /** Material that falls is left to lines that rise from below. */
  @Test
  void eachPositionSpraysItsOwnFloorAndThoseAbove() {
    for (SetUp s : setUps()) {
      boolean byUpper = s.machine().equals(upper().name());
      assertThat(byUpper).isEqualTo(s.floor() >= 5);
    }
    assertThat(two.risers()).isNotEmpty().allMatch(r -> r.to() > r.from());
  }

  @Test
  void theMachineMovesOnceAndHardwareOfBothRisersIsLoaded() {
    assertThat(two.moves()).filteredOn(m -> m.kind() == Move.Kind.SET_MACHINE).hasSize(2);
    assertThat(two.moves().get(0).sentence()).startsWith("Set the machine at ");
    assertThat(two.moves())
        .extracting(Move::sentence)
        .contains("Move the machine to " + upper().name() + " on Level 6.");
    assertThat(two.moves())
        .filteredOn(m -> m.kind() == Move.Kind.RAISE_RISER)
        .hasSameSizeAs(two.risers());
    assertThat(two.floors().get(5).check().orElseThrow().rise().metres()).isZero();
    assertThat(two.floors().get(7).check().orElseThrow().rise().feet()).isCloseTo(24, within(1e-9));
  }

  private static MachineSpot upper() {
    return two.machines().stream().filter(m -> m.floor() > 0).findFirst().orElseThrow();
  }

  private static List<SetUp> setUps() {
    return two.floors().stream().flatMap(f -> f.setUps().stream()).toList();
  }
}
