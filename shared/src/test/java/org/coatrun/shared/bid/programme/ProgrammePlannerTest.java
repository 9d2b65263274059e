package org.coatrun.shared.bid.programme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.coatrun.shared.bid.Rated;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.WorkFinding;
import org.junit.jupiter.api.Test;

class ProgrammePlannerTest {

  /**
   * Two floors of 8,000 bf of beams: 16 h of spraying at 500 bf/h, 8 h of set-up, 1.6 h patching.
   */
  private static final List<RatedLine> TWO_FLOORS =
      List.of(
          Rated.line().area(8000).floor("Level 1").member(),
          Rated.line().step(2).area(8000).floor("Level 2").member());

  private static ProgrammePlan plan(String job, List<RatedLine> lines) {
    return Plans.of(job, lines, Optional.empty());
  }

  /**
   * Hand: floor 1 from hour 0 to 25.6, floor 2 to 51.2: days 1 to 4 and 4 to 7 of 8 h. A floor
   * takes 8,000 / 35.2 = 227.27 bags in its 16 h of spraying, hours 8 to 24 and 33.6 to 49.6. Day 1
   * opens none, days 2 and 3 113.64 each: 114 and 114; day 4 none; day 5 from hour 33.6 to 40, 6.4
   * h or 90.91: 318.18, so 319 - 228 = 91; day 6 113.64: 431.82, 432 - 319 = 113; day 7 the rest:
   * 454.55, 455 - 432 = 23.
   */
  @Test
  void twoFloorsByHand() {
    ProgrammePlan plan = plan("programme: {start: 2026-03-02}", TWO_FLOORS);
    assertThat(plan.floors()).extracting(FloorTime::floor).containsExactly("Level 1", "Level 2");
    assertThat(plan.floors()).extracting(FloorTime::firstDay).containsExactly(1, 4);
    assertThat(plan.floors()).extracting(FloorTime::lastDay).containsExactly(4, 7);
    assertThat(plan.floors().get(1).firstDate()).contains(LocalDate.of(2026, 3, 5));
    assertThat(plan.floors().get(1).lastDate()).contains(LocalDate.of(2026, 3, 10));
    assertThat(plan.days())
        .extracting(WorkDay::bags)
        .containsExactly(0L, 114L, 114L, 0L, 91L, 113L, 23L);
    assertThat(plan.days().get(3).floors()).containsExactly("Level 1", "Level 2");
    assertThat(plan.days().get(6).hours()).isCloseTo(51.2 - 48, within(1e-6));
    assertThat(plan.bags()).isEqualTo(455);
    assertThat(plan.mostBagsInADay()).isEqualTo(114);
    assertThat(plan.findings()).isEmpty();
  }

  /** Without a limit to the room one truck of 880 bags brings all 455, the evening before day 2. */
  @Test
  void trucksComeAsLateAsTheLeadTimeAllows() {
    ProgrammePlan plan = plan("", TWO_FLOORS);
    assertThat(plan.deliveries()).hasSize(1);
    Delivery only = plan.deliveries().get(0);
    assertThat(only.day()).isEqualTo(1);
    assertThat(only.bags()).isEqualTo(455);
    assertThat(only.pallets()).isEqualTo(12);
    assertThat(only.lastUse()).isEqualTo(7);
    assertThat(plan("programme: {lead-time: 3 days}", TWO_FLOORS).deliveries().get(0).day())
        .isEqualTo(-1);
  }

  /**
   * Hand: a room for 4 pallets, 160 bags. Evening of day 1: 4 pallets fit and are topped up (160).
   * Evening of day 2: 46 stand on two pallets, 2 more are needed for day 3 and fit (126). Evening
   * of day 4: 12 stand on one pallet; day 5 needs 91, so 2 pallets, and a third fits (132).
   */
  @Test
  void aSmallRoomTakesWhatFits() {
    ProgrammePlan plan = plan("programme: {storage: 100 ft2}", TWO_FLOORS);
    assertThat(plan.room()).hasValue(160);
    assertThat(plan.deliveries()).extracting(Delivery::day).startsWith(1, 2, 4);
    assertThat(plan.deliveries()).extracting(Delivery::bags).startsWith(160L, 80L, 120L);
    assertThat(plan.mostStock()).isLessThanOrEqualTo(160);
    assertThat(plan.findings()).isEmpty();
  }

  @Test
  void aRoomTooSmallForADayIsAFinding() {
    ProgrammePlan plan = plan("programme: {storage: 50 ft2}", TWO_FLOORS);
    assertThat(plan.findings()).extracting(f -> f.code().code()).containsExactly("F416");
    assertThat(plan.findings().get(0).sentence())
        .contains("takes 2 pallets")
        .contains("in it on day");
  }

  /** Bags that keep 1 day and must come a working day ahead are too old over a weekend. */
  @Test
  void bagsThatCannotBeUsedInTimeAreAFinding() {
    ProgrammePlan plan =
        plan("material: {shelf-life: 1 days}\nprogramme: {start: 2026-03-05}", TWO_FLOORS);
    assertThat(plan.findings()).extracting(f -> f.code().code()).contains("F417");
  }

  @Test
  void moreMachinesShareTheHours() {
    ProgrammePlan one = plan("", TWO_FLOORS);
    ProgrammePlan two = plan("machine: {machines: 2}", TWO_FLOORS);
    assertThat(two.floors().get(1).end()).isCloseTo(one.floors().get(1).end() / 2, within(1e-9));
    assertThat(two.bags()).isEqualTo(one.bags());
    assertThat(two.workingDays()).isEqualTo(4);
  }

  @Test
  void theJobOrdersTheFloors() {
    ProgrammePlan plan = plan("programme: {order: [LEVEL 2, Attic]}", TWO_FLOORS);
    assertThat(plan.floors()).extracting(FloorTime::floor).containsExactly("Level 2", "Level 1");
    assertThat(plan.findings())
        .extracting(Finding::code)
        .containsExactly(WorkFinding.ORDER_UNKNOWN);
    assertThat(plan.findings())
        .extracting(Finding::sentence)
        .containsExactly("programme.order names 'Attic', and no floor is called that.");
  }

  @Test
  void eachFloorHasItsChecks() {
    ProgrammePlan plan = plan("programme: {checks: [deck is dry, light is enough]}", TWO_FLOORS);
    assertThat(plan.checks())
        .containsExactly(
            new FloorCheck("Level 1", 1, 1, "deck is dry"),
            new FloorCheck("Level 1", 1, 2, "light is enough"),
            new FloorCheck("Level 2", 4, 1, "deck is dry"),
            new FloorCheck("Level 2", 4, 2, "light is enough"));
  }

  @Test
  void aProgrammeOfAHundredYearsIsNotLaidOut() {
    List<RatedLine> huge = List.of(Rated.line().area(200_000_000).member());
    ProgrammePlan plan = plan("", huge);
    assertThat(plan.days()).isEmpty();
    assertThat(plan.workingDays()).isGreaterThan(50_000);
    assertThat(plan.findings()).extracting(f -> f.code().code()).containsExactly("F424");
  }

  @Test
  void nothingToSprayTakesNoDay() {
    ProgrammePlan plan = plan("", List.of(Rated.line().notNeeded().member()));
    assertThat(plan.workingDays()).isZero();
    assertThat(plan.deliveries()).isEmpty();
    assertThat(plan.findings()).isEmpty();
  }
}
