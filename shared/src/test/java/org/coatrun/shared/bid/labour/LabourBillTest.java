package org.coatrun.shared.bid.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coatrun.shared.bid.Rated;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.bid.labour.Reach.Standing;
import org.coatrun.shared.bid.material.FloorOrder;
import org.coatrun.shared.bid.material.MaterialBill;
import org.coatrun.shared.job.Access;
import org.coatrun.shared.job.HeightBand;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.rules.MemberKind;
import org.coatrun.shared.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabourBillTest {

  private static LabourBill bill(String text, List<RatedLine> lines) {
    Job job = Job.parse("job.yaml", text);
    FloorOrder order = FloorOrder.of(List.of(), List.of(), lines);
    return LabourBill.of(MaterialBill.of(lines, job, order), job);
  }

  /** The default bands (common practice) end at 10, 20, 40 and 100 ft. */
  @ParameterizedTest(name = "{0} ft: {1} x {2}, {3}")
  @CsvSource({
    "0, FLOOR, 1, WITHIN",
    "10, FLOOR, 1, WITHIN",
    "10.1, POLE_GUN, 1.2, WITHIN",
    "20, POLE_GUN, 1.2, WITHIN",
    "39.9, LIFT, 1.5, WITHIN",
    "60, SCAFFOLD, 2, WITHIN",
    "100.5, SCAFFOLD, 2, ABOVE"
  })
  void heightTellsHowSteelIsReached(double feet, Access access, double factor, Standing standing) {
    Reach reach = Reach.of(Optional.of(Length.ofFeet(feet)), Job.defaults().labour().bands());
    assertThat(reach.access()).isEqualTo(access);
    assertThat(reach.factor()).isEqualTo(factor);
    assertThat(reach.standing()).isEqualTo(standing);
  }

  @Test
  void withoutAHeightTheFirstBandIsUsedAndKnownToBeAGuess() {
    List<HeightBand> bands = Job.defaults().labour().bands();
    assertThat(Reach.of(Optional.empty(), bands))
        .isEqualTo(new Reach(0, Access.FLOOR, 1, Standing.UNKNOWN));
  }

  /**
   * Hand, by the default rates (common practice): 1,000 bf of beams at 500 bf/h from the floor 2 h;
   * 400 bf of columns at 400 bf/h, 15 ft up, 1 x 1.2 = 1.2 h; 700 bf of deck at 700 bf/h, 30 ft up,
   * 1 x 1.5 = 1.5 h: 4.7 h of spraying, 8 h of set-up, 10 % or 0.47 h of patching, 13.17 crew hours
   * of four people.
   */
  @Test
  void aFloorByHand() {
    LabourBill bill =
        bill(
            "",
            List.of(
                Rated.line().area(1000).member(),
                Rated.line()
                    .step(2)
                    .kind(MemberKind.COLUMN, Role.COLUMN)
                    .area(400)
                    .topFeet(15)
                    .member(),
                Rated.line().step(3).area(700).topFeet(30).deck()));
    LabourSum sum = bill.total();
    assertThat(sum.spraying()).isCloseTo(4.7, within(1e-6));
    assertThat(sum.waiting()).isZero();
    assertThat(sum.setUp()).isEqualTo(8);
    assertThat(sum.patching()).isCloseTo(0.47, within(1e-6));
    assertThat(sum.byLift()).isCloseTo(1.5, within(1e-6));
    assertThat(bill.personHours()).isCloseTo(52.68, within(1e-5));
    assertThat(bill.liftDays()).isEqualTo(1);
    assertThat(bill.sprayingByAccess())
        .containsOnlyKeys("from the floor", "from the floor with a pole gun", "from a lift");
  }

  /**
   * Hand: 880 bf in place are 25 bags of 35.2 bf; at 5 bags an hour 5 h against 880/500 = 1.76 h.
   */
  @Test
  void aSlowMachineLetsTheCrewWait() {
    LabourSum sum =
        bill("machine: {rate: 5 bags/h}", List.of(Rated.line().area(880).member())).total();
    assertThat(sum.spraying()).isCloseTo(1.76, within(1e-6));
    assertThat(sum.waiting()).isCloseTo(5 - 1.76, within(1e-6));
  }

  @Test
  void floorsWithoutWorkNeedNoSetUp() {
    LabourBill bill =
        bill(
            "", List.of(Rated.line().member(), Rated.line().step(2).floor("B").missing().member()));
    assertThat(bill.byFloor()).containsEntry("B", LabourSum.NONE);
    assertThat(bill.total().setUp()).isEqualTo(8);
  }

  @Test
  void liftDaysAreWholeOnEachFloor() {
    RatedLine low = Rated.line().area(100).topFeet(30).member();
    RatedLine high = Rated.line().step(2).floor("Level 2").area(100).topFeet(30).member();
    assertThat(bill("", List.of(low, high)).liftDays()).isEqualTo(2);
  }

  @Test
  void hoursByAnythingEqualTheTotal() {
    LabourBill bill = bill("", Rated.random(11, 300));
    for (Map<String, Double> hours :
        List.of(
            bill.sprayingByKind(),
            bill.sprayingByRole(),
            bill.sprayingByAccess(),
            bill.spraying(LabourLine::floor),
            bill.spraying(line -> line.material().rule()))) {
      double sum = hours.values().stream().mapToDouble(Double::doubleValue).sum();
      assertThat(sum).isEqualTo(bill.total().spraying());
    }
  }
}
