package org.coatrun.shared.bid.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.coatrun.shared.bid.Rated;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.bid.material.FloorOrder;
import org.coatrun.shared.bid.material.MaterialBill;
import org.coatrun.shared.bid.material.WorkFloor;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.rules.MemberKind;
import org.coatrun.shared.rules.ReadingPlace;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class InspectionPlannerTest {

  private static final WorkFloor LEVEL_1 =
      new WorkFloor("Level 1", Optional.of(Length.ZERO), Optional.of(Area.ofSquareFeet(6000)));

  private static InspectionPlan plan(String text, List<WorkFloor> floors, List<RatedLine> lines) {
    Job job = Job.parse("job.yaml", text);
    FloorOrder order = FloorOrder.of(job.programme().order(), floors, lines);
    return InspectionPlanner.plan(MaterialBill.of(lines, job, order), job);
  }

  private static List<RatedLine> columns(int count) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(i -> Rated.line().step(i).kind(MemberKind.COLUMN, Role.COLUMN).member())
        .toList();
  }

  private static Set<String> drawn(InspectionPlan plan) {
    Set<String> guids = new HashSet<>();
    plan.rows().forEach(row -> guids.add(row.guid()));
    return guids;
  }

  /** IBC 1705.15: 25 % of the members of a floor; 100 columns: 25, each 12 places at two ends. */
  @Test
  void aQuarterOfTheColumnsIsReadAtTwelvePlacesAtEachEnd() {
    InspectionPlan plan = plan("", List.of(LEVEL_1), columns(100));
    FloorInspection floor = plan.floors().get(0);
    assertThat(floor.members()).isEqualTo(100);
    assertThat(floor.drawnMembers()).isEqualTo(25);
    assertThat(plan.rows()).hasSize(25 * 24);
    assertThat(floor.readings()).isEqualTo(25 * 24);
    assertThat(drawn(plan)).hasSize(25);
  }

  @ParameterizedTest(name = "{0} members: {1}")
  @CsvSource({"1, 1", "4, 1", "5, 2", "8, 2", "9, 3"})
  void partsOfAMemberAreAMember(int members, int drawn) {
    assertThat(plan("", List.of(LEVEL_1), columns(members)).floors().get(0).drawnMembers())
        .isEqualTo(drawn);
  }

  @Test
  void theJobMayAskForMore() {
    assertThat(drawn(plan("inspection: {share: 50 %}", List.of(), columns(10)))).hasSize(5);
  }

  /** IBC 1705.14.4.2 of 2018: 4 readings for each 1,000 ft2; 2,350 ft2 are three groups, 12. */
  @Test
  void deckIsReadByTheThousandSquareFeet() {
    InspectionPlan plan =
        plan(
            "",
            List.of(LEVEL_1),
            List.of(Rated.line().area(2000).deck(), Rated.line().step(2).area(350).deck()));
    FloorInspection floor = plan.floors().get(0);
    assertThat(floor.deckSpots()).isEqualTo(3);
    assertThat(plan.rows()).hasSize(12);
    assertThat(plan.rows())
        .extracting(FieldRow::where)
        .startsWith("valley", "crest", "left side", "right side", "valley");
    assertThat(floor.deckSamples()).isEqualTo(1);
    // The middles of the three parts lie 392, 1,175 and 1,958 ft2 along: all in the first deck.
    assertThat(drawn(plan)).containsExactly("guid1");
  }

  @Test
  void decksOfAnotherThicknessHaveSpotsOfTheirOwn() {
    InspectionPlan plan =
        plan(
            "",
            List.of(LEVEL_1),
            List.of(
                Rated.line().area(2000).deck(), Rated.line().step(2).area(10).inches(0.5).deck()));
    assertThat(plan.floors().get(0).deckSpots()).isEqualTo(3);
    assertThat(drawn(plan)).containsExactlyInAnyOrder("guid1", "guid2");
  }

  /** From memory: a sample for each 2,500 ft2 of floor and kind of member; 6,000 ft2 take three. */
  @Test
  void samplesGoByFloorAndKind() {
    List<RatedLine> lines = new ArrayList<>(columns(2));
    lines.add(Rated.line().step(9).member());
    InspectionPlan plan = plan("", List.of(LEVEL_1), lines);
    assertThat(plan.floors().get(0).kinds()).extracting(KindCount::samples).containsExactly(3L, 3L);
    assertThat(plan.samples()).isEqualTo(6);
    assertThat(plan("", List.of(), lines).samples()).isEqualTo(2);
  }

  @Test
  void theDrawIsTheSameEachTimeInWhateverOrderMembersCome() {
    List<RatedLine> lines = new ArrayList<>(columns(60));
    Set<String> first = drawn(plan("", List.of(), lines));
    Collections.shuffle(lines, new Random(3));
    InspectionPlan again = plan("", List.of(), lines);
    assertThat(drawn(again)).isEqualTo(first);
    assertThat(again.rows()).isEqualTo(plan("", List.of(), columns(60)).rows());
    assertThat(drawn(plan("inspection: {draw: 2}", List.of(), lines))).isNotEqualTo(first);
  }

  @Test
  void aMemberMoreChangesNoOtherTicket() {
    Set<String> before = drawn(plan("", List.of(), columns(60)));
    Set<String> after = drawn(plan("", List.of(), columns(61)));
    before.removeAll(after);
    assertThat(before).hasSizeLessThanOrEqualTo(1);
  }

  /** Over many draws each of 20 members comes up about as often: 500 of 2,000, give or take 5 s. */
  @Test
  void everyMemberMayBeDrawn() {
    int[] times = new int[21];
    for (int draw = 0; draw < 2000; draw++) {
      int number = draw;
      IntStream.rangeClosed(1, 20)
          .boxed()
          .sorted(
              (a, b) ->
                  Long.compare(Draw.ticket("guid" + a, number), Draw.ticket("guid" + b, number)))
          .limit(5)
          .forEach(i -> times[i]++);
    }
    double deviation = Math.sqrt(2000 * 0.25 * 0.75);
    for (int i = 1; i <= 20; i++) {
      assertThat((double) times[i]).isCloseTo(500, within(5 * deviation));
    }
  }

  @ParameterizedTest
  @EnumSource(ReadingPlace.class)
  void eachPlaceHasItsOwnWords(ReadingPlace kind) {
    assertThat(PlaceWords.of(kind)).hasSize(kind.atEachEnd()).doesNotHaveDuplicates();
  }

  /** IBC 1705.14.6 and Table 403.2.4: 150, 430 above 75 ft, 1,000 psf above 420 ft. */
  @ParameterizedTest(name = "{0}: {1} psf")
  @CsvSource(
      delimiter = '|',
      value = {
        "building: {height: 60 ft, highest-floor: 50 ft} | 150",
        "building: {height: 500 ft, highest-floor: 75 ft} | 150",
        "building: {height: 420 ft, highest-floor: 76 ft} | 430",
        "building: {height: 421 ft, highest-floor: 400 ft} | 1000"
      })
  void bondGoesByHeight(String job, double psf) {
    assertThat(plan(job, List.of(), columns(1)).leastBond().orElseThrow().psf())
        .isCloseTo(psf, within(1e-6));
  }

  @Test
  void withoutHeightsInTheJobTheFloorsTell() {
    List<WorkFloor> floors =
        Stream.of(0, 40, 80)
            .map(
                ft ->
                    new WorkFloor("L" + ft, Optional.of(Length.ofFeet(ft)), Optional.<Area>empty()))
            .toList();
    assertThat(plan("", floors, columns(1)).leastBond().orElseThrow().psf())
        .isCloseTo(430, within(1e-6));
    assertThat(plan("", List.of(), columns(1)).leastBond()).isEmpty();
  }
}
