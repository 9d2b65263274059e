package org.coatrun.shared.bid.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.coatrun.shared.bid.Rated;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.rules.CoatVolume;
import org.coatrun.shared.rules.MemberKind;
import org.coatrun.shared.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MaterialBillTest {

  private static MaterialBill bill(String job, RatedLine... lines) {
    return bill(Job.parse("job.yaml", job), List.of(lines));
  }

  private static MaterialBill bill(Job job, List<RatedLine> lines) {
    return MaterialBill.of(lines, job, FloorOrder.of(List.of(), List.of(), lines));
  }

  /**
   * Hand: a W12X26 column, sharp: d 12.2, bf 6.49, tw 0.23 in (AISC Manual), so P = 2 x 12.2 + 4 x
   * 6.49 - 2 x 0.23 = 49.9 in; 12 ft long, 49.9 ft2; at 1-1/4 in 62.375 bf by area. Corners: k = 2
   * pi - 4 = 2.28319, k t2 = 3.56748 in2, over 144 in 513.717 in3, 3.56748 bf; 65.94248 bf in all.
   */
  @Test
  void aColumnByHand() {
    MaterialLine line =
        bill(
                "",
                Rated.line()
                    .kind(MemberKind.COLUMN, Role.COLUMN)
                    .area(49.9)
                    .corners(CoatVolume.cornerFactorFourSided(), 12)
                    .inches(1.25)
                    .member())
            .lines()
            .get(0);
    assertThat(line.byArea().boardFeet()).isCloseTo(62.375, within(1e-6));
    assertThat(line.byOffset().orElseThrow().boardFeet()).isCloseTo(65.94248, within(1e-5));
    assertThat(line.inPlace()).isEqualTo(line.byArea());
    // 12 % of what is sprayed is lost (common practice): 62.375 / 0.88 = 70.88068.
    assertThat(line.sprayed().boardFeet()).isCloseTo(70.88068, within(1e-5));
  }

  @Test
  void theJobOrdersByTheTrueVolumeWhereItSaysSo() {
    RatedLine known = Rated.line().corners(2, 10).member();
    RatedLine unknown = Rated.line().step(2).member();
    MaterialBill bill = bill("material: {order: offset}", known, unknown);
    // 100 bf, and 2 x 1 in2 x 120 in = 240 in3 = 1.66667 bf.
    assertThat(bill.lines().get(0).inPlace().boardFeet()).isCloseTo(101.66667, within(1e-5));
    assertThat(bill.lines().get(1).inPlace().boardFeet()).isCloseTo(100, within(1e-6));
    assertThat(bill.lines().get(1).byOffset()).isEmpty();
  }

  @Test
  void attachmentsAreAllowedForOnSteelAndNotOnDeck() {
    MaterialBill bill =
        bill(
            "exposure: {attachment-allowance: 5 %}",
            Rated.line().member(), Rated.line().step(2).deck());
    assertThat(bill.lines().get(0).area().squareFeet()).isCloseTo(105, within(1e-6));
    assertThat(bill.lines().get(1).area().squareFeet()).isCloseTo(100, within(1e-6));
  }

  /**
   * Hand: composite 3 in deck unfolds by 16/12 (web 3.25 in, a 5-12-13 triangle halved). Its
   * corners turn by atan(3 / 1.25), 1.17601; tan of half that is 2/3; k = 1.17601 - 4/3 = -0.15733
   * a pitch. 90 ft2 have 90 ft of flutes of 1 ft: -0.15733 in2 x 1,080 in = -169.91 in3 = -1.17994
   * bf.
   */
  @Test
  void flatDeckIsUnfoldedByTheProfileOfTheJob() {
    MaterialLine line = bill("", Rated.line().area(90).flat().deck()).lines().get(0);
    assertThat(line.area().squareFeet()).isCloseTo(120, within(1e-6));
    assertThat(line.byOffset().orElseThrow().minus(line.byArea()).boardFeet())
        .isCloseTo(-1.17994, within(1e-4));
    assertThat(bill("", Rated.line().area(90).deck()).lines().get(0).area().squareFeet())
        .isCloseTo(90, within(1e-6));
  }

  /**
   * Hand: a flange of 6 in under 20 ft of deck, 10 ft2. Ribs of 7-1/4 and 4-3/4 in fill half of a
   * pitch of 12 in and 3 in of depth: 1-1/2 in of void on average, 15 bf.
   */
  @Test
  void flutesAboveBeamsAreFilledWhereTheJobSaysSo() {
    RatedLine beam = Rated.line().fluteBed(10).corners(0, 20).member();
    MaterialLine filled = bill("", beam).lines().get(0);
    assertThat(filled.fluteFill().boardFeet()).isCloseTo(15, within(1e-6));
    assertThat(filled.byArea().boardFeet()).isCloseTo(115, within(1e-6));
    assertThat(filled.byOffset().orElseThrow().boardFeet()).isCloseTo(115, within(1e-6));
    MaterialLine open = bill("deck: {fill-flutes: no}", beam).lines().get(0);
    assertThat(open.byArea().boardFeet()).isCloseTo(100, within(1e-6));
  }

  /** Voids of 15 bf over 10 ft2 of open flange, filled: 90 ft2 are left at 1 in. */
  @Test
  void theFlangeUnderFilledFlutesTakesNoOtherCoat() {
    RatedLine beam = Rated.line().drawnFlutes(15, 10).corners(0, 20).member();
    MaterialLine filled = bill("", beam).lines().get(0);
    assertThat(filled.fluteFill().boardFeet()).isCloseTo(15, within(1e-6));
    assertThat(filled.area().squareFeet()).isCloseTo(90, within(1e-6));
    assertThat(filled.byArea().boardFeet()).isCloseTo(105, within(1e-6));
    assertThat(filled.byOffset().orElseThrow().boardFeet()).isCloseTo(105, within(1e-6));
    MaterialLine open = bill("deck: {fill-flutes: no}", beam).lines().get(0);
    assertThat(open.byArea().boardFeet()).isCloseTo(100, within(1e-6));
  }

  @Test
  void onlyRoofDeckWithoutConcreteAndCellularDeckTakeABondingCoat() {
    RatedLine floor = Rated.line().deck();
    RatedLine roof = Rated.line().step(2).roof().deck();
    assertThat(bill("", floor, roof).total().bonding().squareFeet()).isCloseTo(100, within(1e-6));
    assertThat(bill("deck: {cellular: yes}", floor, roof).total().bonding().squareFeet())
        .isCloseTo(200, within(1e-6));
    assertThat(bill("deck: {galvanised: no}", floor, roof).total().bonding().squareFeet()).isZero();
    assertThat(bill("deck: {concrete-on-roof-deck: yes}", roof).total().bonding().squareFeet())
        .isZero();
  }

  @Test
  void whatHasNoThicknessIsCountedApart() {
    MaterialBill bill =
        bill("", Rated.line().missing().member(), Rated.line().step(2).notNeeded().member());
    assertThat(bill.lines()).isEmpty();
    assertThat(bill.withoutThickness()).hasSize(1);
    assertThat(bill.total()).isEqualTo(MaterialSum.NONE);
  }

  @Test
  void eachKindLosesItsOwnShare() {
    MaterialBill bill =
        bill(
            "material: {waste: {column: 10 %, beam: 20 %, deck: 50 %}}",
            Rated.line().kind(MemberKind.HOLLOW_COLUMN, Role.COLUMN).member(),
            Rated.line().step(2).member(),
            Rated.line().step(3).deck());
    assertThat(bill.lines())
        .extracting(l -> Math.round(l.sprayed().boardFeet() * 1000) / 1000.0)
        .containsExactly(111.111, 125.0, 200.0);
  }

  /** Equality is of doubles, to the last bit: nothing is rounded on the way. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void sumsByAnythingEqualTheTotal(long seed) {
    List<RatedLine> lines = new ArrayList<>(Rated.random(seed, 400));
    Job job = Job.parse("job.yaml", "exposure: {attachment-allowance: 3 %}");
    MaterialBill bill = bill(job, lines);
    for (Map<String, MaterialSum> sums :
        List.of(bill.byFloor(), bill.bySection(), bill.byRole(), bill.byRule(), bill.byKind())) {
      MaterialSum sum = sums.values().stream().reduce(MaterialSum.NONE, MaterialSum::plus);
      assertThat(sum).isEqualTo(bill.total());
      assertThat(sums.size()).isGreaterThan(1);
    }
    Collections.shuffle(lines, new Random(seed));
    assertThat(bill(job, lines).total()).isEqualTo(bill.total());
  }

  @Test
  void aChangedElementChangesItsOwnSumsOnly() {
    List<RatedLine> lines = new ArrayList<>(Rated.random(7, 100));
    MaterialBill before = bill(Job.defaults(), lines);
    lines.add(Rated.line().step(1000).floor("Level 9").section("NEW").rule("new").member());
    MaterialBill after = bill(Job.defaults(), lines);
    assertThat(after.bySection()).containsAllEntriesOf(before.bySection()).containsKey("NEW");
    assertThat(after.byRule()).containsAllEntriesOf(before.byRule()).containsKey("new");
  }

  @Test
  void floorsComeInTheOrderOfTheJobThenFromTheLowestUp() {
    List<WorkFloor> floors =
        List.of(
            new WorkFloor("Roof", feet(36), Optional.empty()),
            new WorkFloor("Level 2", feet(12), Optional.empty()),
            new WorkFloor("Level 1", feet(0), Optional.empty()));
    FloorOrder order =
        FloorOrder.of(
            List.of("roof", "Attic"), floors, List.of(Rated.line().floor("Elsewhere").member()));
    assertThat(order.names()).containsExactly("Roof", "Level 1", "Level 2", "Elsewhere");
    assertThat(order.unknown()).containsExactly("Attic");
  }

  private static Optional<Length> feet(double value) {
    return Optional.of(Length.ofFeet(value));
  }
}
