package org.coatrun.shared.bid.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.coatrun.shared.bid.Rated;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.bid.material.FloorOrder;
import org.coatrun.shared.bid.material.MaterialBill;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.job.UnitSystem;
import org.coatrun.shared.yaml.JobFileException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InspectionJudgeTest {

  private static final String HEADER = String.join(",", FieldSheet.HEADER) + "\n";

  /** Rows of one set with a design and readings; "-" is a blank one. */
  private static String set(String floor, int set, String design, String... readings) {
    return IntStream.range(0, readings.length)
        .mapToObj(
            i ->
                String.join(
                    ",",
                    floor,
                    "" + set,
                    "guid" + set,
                    "B" + set,
                    "beam",
                    "W12X26",
                    "1",
                    "" + (i + 1),
                    "place " + (i + 1),
                    design,
                    "",
                    readings[i].equals("-") ? "" : readings[i]))
        .collect(Collectors.joining("\n", "", "\n"));
  }

  private static InspectionJudgement judge(String... sets) {
    String text = HEADER + String.join("", sets);
    return InspectionJudge.judge("r.csv", FieldSheetReader.parse("r.csv", text), UnitSystem.US);
  }

  /**
   * Design 1-1/4 in, readings 1.25, 1.60, 1.10, 1.30: 1.60 counts as 1.50, the average is 1.2875,
   * each is 1.00 or more: it passes by ASTM E605 8.1. One of four lies under the design: it fails
   * by the 10 % rule of IBC 2018 1705.14.4. (Worked from the published rules.)
   */
  @Test
  void aMemberMayPassOneRuleAndFailTheOther() {
    InspectionJudgement judged =
        judge(set("Level 1", 1, "1-1/4 in", "1.25", "1.60", "1.10", "1.30"));
    SetJudgement set = judged.sets().get(0);
    assertThat(set.averaging().orElseThrow().average().inches()).isCloseTo(1.2875, within(1e-9));
    assertThat(set.passesAveraging()).isTrue();
    assertThat(set.passesTenPercent()).isFalse();
    FloorJudgement floor = judged.floors().get(0);
    assertThat(floor.passesAveraging()).isTrue();
    assertThat(floor.passesTenPercent()).isFalse();
    assertThat(floor.below()).isEqualTo(1);
    assertThat(judged.passes()).isFalse();
    assertThat(judged.resprays())
        .extracting(Respray::reason)
        .containsExactly("1 of 4 readings under the design, over 10 %");
  }

  /** UFGS 07 81 00 3.4: under 1 in the least reading is the design less 25 %: 3/4 in, 9/16 in. */
  @Test
  void aReadingUnderTheLeastFailsTheAveragingRule() {
    InspectionJudgement judged =
        judge(set("Level 1", 1, "3/4 in", "1", "1", "1", "1", "1", "1", "1", "1", "1", "1/2"));
    SetJudgement set = judged.sets().get(0);
    assertThat(set.averaging().orElseThrow().lowestAllowed().inches())
        .isCloseTo(0.5625, within(1e-9));
    assertThat(set.passesAveraging()).isFalse();
    assertThat(set.passesTenPercent()).isTrue();
    Respray respray = judged.resprays().get(0);
    assertThat(respray.reason()).isEqualTo("lowest reading 1/2 in, least allowed 9/16 in");
    assertThat(respray.places()).containsExactly("end 1, place 10");
    assertThat(respray.lacking().inches()).isZero();
  }

  @Test
  void whatTheAverageLacksIsSaid() {
    InspectionJudgement judged = judge(set("Level 1", 1, "1 in", "7/8", "7/8", "1 in", "1"));
    assertThat(judged.resprays().get(0).lacking().inches()).isCloseTo(0.0625, within(1e-9));
    assertThat(judged.resprays().get(0).reason())
        .isEqualTo("averages 15/16 in of 1 in; 2 of 4 readings under the design, over 10 %");
  }

  /** Two of 25 readings on the floor are 8 %: the floor passes, the member with 2 of 5 does not. */
  @Test
  void floorsAreJudgedByAllTheirReadings() {
    String[] good = {"1", "1", "1", "1", "1", "1", "1", "1", "1", "1"};
    InspectionJudgement judged =
        judge(
            set("Level 1", 1, "1 in", good),
            set("Level 1", 2, "1 in", good),
            set("Level 1", 3, "1 in", "1.25", "1.25", "1.25", "0.95", "0.95"),
            set("Level 2", 4, "1 in", good));
    FloorJudgement first = judged.floors().get(0);
    assertThat(first.passesTenPercent()).isTrue();
    assertThat(first.failTenPercent()).isEqualTo(1);
    assertThat(first.readings()).isEqualTo(25);
    assertThat(judged.floors().get(1).passesTenPercent()).isTrue();
    assertThat(judged.resprays()).extracting(Respray::set).containsExactly(3);
  }

  @Test
  void blankReadingsAreMissingAndNeverPass() {
    InspectionJudgement judged =
        judge(set("Level 1", 1, "1 in", "1", "-", "1"), set("Level 1", 2, "1 in", "-", "-"));
    FloorJudgement floor = judged.floors().get(0);
    assertThat(floor.missing()).isEqualTo(3);
    assertThat(floor.notRead()).isEqualTo(1);
    assertThat(floor.complete()).isFalse();
    assertThat(floor.passesAveraging()).isTrue();
    assertThat(judged.passes()).isFalse();
    assertThat(judged.sets().get(1).passesAveraging()).isFalse();
    assertThat(judged.resprays()).isEmpty();
  }

  /** What is handed out, filled in with the design, comes back and passes, in either unit. */
  @ParameterizedTest
  @CsvSource({"US", "SI"})
  void sheetsGoOutAndComeBack(UnitSystem units) {
    List<RatedLine> lines = Rated.random(5, 60);
    Job job = Job.defaults();
    FloorOrder order = FloorOrder.of(List.of(), List.of(), lines);
    InspectionPlan plan = InspectionPlanner.plan(MaterialBill.of(lines, job, order), job);
    StringJoiner text = new StringJoiner("\n", HEADER, "\n");
    for (FieldRow row : plan.rows()) {
      List<String> cells = FieldSheet.cells(row, units);
      String filled = "\"" + String.join("\",\"", cells.subList(0, cells.size() - 1)) + "\",";
      text.add(filled + FieldSheet.written(row.design(), units));
    }
    List<FieldReading> readings = FieldSheetReader.parse("r.csv", text.toString());
    assertThat(readings).hasSameSizeAs(plan.rows());
    assertThat(readings)
        .extracting(r -> r.row().where())
        .isEqualTo(plan.rows().stream().map(FieldRow::where).toList());
    InspectionJudgement judged = InspectionJudge.judge("r.csv", readings, units);
    assertThat(judged.passes()).isTrue();
    assertThat(judged.sets().size())
        .isEqualTo(plan.floors().stream().mapToInt(f -> f.drawn().size()).sum());
  }

  @Test
  void aReadingHasTheUnitOfItsDesignUnlessItSaysAnother() {
    InspectionJudgement judged = judge(set("Level 1", 1, "26 mm", "26", "1-1/8 in"));
    assertThat(judged.sets().get(0).averaging().orElseThrow().lowest().millimetres())
        .isCloseTo(26, within(1e-9));
    assertThat(judged.passes()).isTrue();
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "L,1,g,n,beam,s,1,1,w,1 in,,thick | 'r.csv line 2, reading: ''thick'' is not a length; write a"
            + " number and one of ft, in, m, mm.'",
        "L,1,g,n,beam,s,1,1,w,,,1 | 'r.csv line 2, design: '''' is not a length; write a number and"
            + " one of ft, in, m, mm.'",
        "L,1,g,n,beam,s,1,1,w,0 in,,1 | 'r.csv line 2, design: the design thickness must be above 0.'",
        "L,1,g,n,beam,s,1,1,w,1 in,,12 ft | 'r.csv line 2, reading: ''12 ft'' cannot be the thickness"
            + " of a coat.'",
        "L,1,g,n,beam,s,1,1,w,1 in,,-1 in | 'r.csv line 2, reading: ''-1 in'' cannot be the thickness"
            + " of a coat.'",
        "L,x,g,n,beam,s,1,1,w,1 in,,1 | 'r.csv line 2, set: ''x'' is not a whole number.'",
        "L,1,g,n,beam,s,1,1,w,1 in | 'r.csv line 2: this row has 10 cells, the header 12.'"
      })
  void saysWhatIsWrongAndWhere(String row, String sentence) {
    assertThatThrownBy(() -> FieldSheetReader.parse("r.csv", HEADER + row + "\n"))
        .isInstanceOf(JobFileException.class)
        .hasMessage(sentence);
  }

  @Test
  void rowsOfOneSetMustAgree() {
    String first = set("Level 1", 1, "1 in", "1");
    assertThatThrownBy(() -> judge(first, set("Level 2", 1, "1 in", "1")))
        .hasMessage("r.csv line 3, set: the rows of set 1 differ in floor or design.");
    assertThatThrownBy(() -> judge(first, first))
        .hasMessage("r.csv line 3, place: end 1 place 1 of set 1 stands on line 2 already.");
    assertThatThrownBy(() -> FieldSheetReader.parse("r.csv", HEADER))
        .hasMessage("r.csv line 1: there is no row under the header.");
    assertThatThrownBy(() -> FieldSheetReader.parse("r.csv", "floor,set\nL,1\n"))
        .hasMessageContaining("r.csv line 1, guid: this column is missing");
  }
}
