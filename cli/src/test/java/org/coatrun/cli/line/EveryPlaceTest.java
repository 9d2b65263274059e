package org.coatrun.cli.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.coatrun.shared.finding.LineFinding;
import org.coatrun.shared.line.FloorPlan;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.NoRoute;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.SetUp;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Of every building all work is covered, or named with the reason; the two add up. */
class EveryPlaceTest {

  @ParameterizedTest
  @EnumSource
  void placesCoveredAndPlacesNamedAreAllPlaces(PlannedBuilding building) {
    LinePlan plan = building.plan();
    Set<Integer> covered = cells(plan, Route.class);
    Set<Integer> named = cells(plan, NoRoute.class);
    assertThat(covered.size() + named.size()).isEqualTo(plan.cells().size()).isPositive();
    assertThat(sprayed(plan)).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(covered);
    List<Integer> onFloors = plan.floors().stream().flatMap(f -> f.cells().stream()).toList();
    assertThat(onFloors)
        .doesNotHaveDuplicates()
        .containsExactlyInAnyOrderElementsOf(
            IntStream.range(0, plan.cells().size()).boxed().toList());
    assertThat(plan.findings())
        .filteredOn(f -> f.code() == LineFinding.OUT_OF_LINE)
        .hasSameSizeAs(named);
    assertThat(plan.findings())
        .filteredOn(f -> f.code() == LineFinding.NO_FLOOR_UNDER)
        .hasSameSizeAs(plan.groundless());
  }

  @ParameterizedTest
  @EnumSource
  void coatingCoveredAndNamedIsAllThatWasAskedFor(PlannedBuilding building) {
    LinePlan plan = building.plan();
    double asked =
        building.request().work().stream().mapToDouble(p -> p.coating().cubicMetres()).sum();
    double covered = setUps(plan).mapToDouble(s -> s.coating().cubicMetres()).sum();
    double named =
        cells(plan, NoRoute.class).stream()
            .mapToDouble(c -> plan.cells().get(c).coating().cubicMetres())
            .sum();
    double groundless =
        plan.groundless().stream().mapToDouble(p -> p.coating().cubicMetres()).sum();
    assertThat(covered + named + groundless).isCloseTo(asked, within(1e-9 * asked));
  }

  /** By how much, in the sentence and in the number; where nothing can be measured, neither. */
  @ParameterizedTest
  @EnumSource
  void whatIsNamedSaysWhichLimitBrokeAndByHowMuch(PlannedBuilding building) {
    for (NoRoute none : misses(building.plan())) {
      switch (none.limit()) {
        case FLEXIBLE_HOSE, MACHINE_LIFT -> {
          assertThat(none.over().metres()).isPositive();
          assertThat(none.sentence())
              .contains(building.request().wording().length(none.over()) + " over");
        }
        default -> {
          assertThat(none.over().metres()).isZero();
          assertThat(none.sentence()).containsAnyOf("close every way", "no riser", "no place");
        }
      }
    }
  }

  @Test
  void limitsOfThreeKindsBreakInTheseBuildings() {
    Set<NoRoute.Limit> broken = EnumSet.noneOf(NoRoute.Limit.class);
    for (PlannedBuilding building : PlannedBuilding.values()) {
      misses(building.plan()).forEach(none -> broken.add(none.limit()));
    }
    assertThat(broken)
        .contains(NoRoute.Limit.FLEXIBLE_HOSE, NoRoute.Limit.MACHINE_LIFT, NoRoute.Limit.NO_WAY);
    for (PlannedBuilding whole :
        List.of(PlannedBuilding.HALL, PlannedBuilding.L_SHAPED, PlannedBuilding.TOWER)) {
      assertThat(misses(whole.plan())).as(whole.name()).isEmpty();
    }
  }

  private static List<NoRoute> misses(LinePlan plan) {
    return plan.routes().stream()
        .filter(NoRoute.class::isInstance)
        .map(NoRoute.class::cast)
        .toList();
  }

  private static Set<Integer> cells(LinePlan plan, Class<?> kind) {
    var cells = new HashSet<Integer>();
    IntStream.range(0, plan.cells().size())
        .filter(c -> kind.isInstance(plan.routes().get(c)))
        .forEach(cells::add);
    return cells;
  }

  private static List<Integer> sprayed(LinePlan plan) {
    var cells = new ArrayList<Integer>();
    setUps(plan).forEach(s -> cells.addAll(s.cells()));
    return cells;
  }

  private static Stream<SetUp> setUps(LinePlan plan) {
    return plan.floors().stream().map(FloorPlan::setUps).flatMap(List::stream);
  }
}
