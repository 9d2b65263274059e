package org.coatrun.cli.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Pen;
import org.coatrun.cli.report.UnitSystem;
import org.coatrun.shared.line.Leg;
import org.coatrun.shared.line.LineLimits;
import org.coatrun.shared.line.LinePlan;
import org.coatrun.shared.line.LineRequest;
import org.coatrun.shared.line.MachineSpot;
import org.coatrun.shared.line.Route;
import org.coatrun.shared.line.SetUp;
import org.coatrun.shared.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DrawingsTest {

  private static final DrawingJob OFFICE =
      SampleLines.job("Office", UnitSystem.US, SampleLines.office(5));
  private static final DrawingJob ELL = SampleLines.job("L", UnitSystem.SI, tight());

  private static LineRequest tight() {
    LineLimits limits = LineLimits.commonPractice().withFlexible(Length.ofFeet(110));
    return SampleLines.ell().withLimits(limits);
  }

  private static final DrawingJob HALL = SampleLines.job("Hall", UnitSystem.SI, SampleLines.hall());
  private static final DrawingJob TOWER = SampleLines.job("Tower", UnitSystem.US, byHeight());

  /** Eight storeys, and a machine that lifts no more than six of them. */
  private static LineRequest byHeight() {
    LineLimits limits = LineLimits.commonPractice().withMachineLift(Length.ofMetres(21));
    return SampleLines.tower(8).withLimits(limits).withSpots(List.of(), 2);
  }

  static Stream<DrawingJob> jobs() {
    return Stream.of(OFFICE, ELL, HALL, TOWER);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyFloorHasAPlanAndTheLastSheetIsASection(DrawingJob job) {
    List<Sheet> sheets = Drawings.sheets(job);
    assertThat(sheets).hasSize(job.request().floors().size() + 1);
    assertThat(sheets.get(sheets.size() - 1).file()).isEqualTo("section");
    assertThat(new HashSet<>(sheets.stream().map(Sheet::file).toList())).hasSameSizeAs(sheets);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everythingLiesInsideTheSheet(DrawingJob job) {
    for (Sheet sheet : Drawings.sheets(job)) {
      Box paper = new Box(0, 0, sheet.paper().width(), sheet.paper().height()).grown(-5);
      assertThat(MarksOnPaper.of(sheet).points).isNotEmpty().allMatch(paper::contains);
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void noTextLiesOnAnother(DrawingJob job) {
    for (Sheet sheet : Drawings.sheets(job)) {
      List<MarksOnPaper.Text> level =
          MarksOnPaper.of(sheet).texts.stream().filter(t -> t.turn() == 0).toList();
      for (int i = 0; i < level.size(); i++) {
        for (int j = i + 1; j < level.size(); j++) {
          assertThat(level.get(i).box().meets(level.get(j).box()))
              .as("%s: %s on %s", sheet.file(), level.get(i), level.get(j))
              .isFalse();
        }
      }
    }
  }

  /** To a tenth of a millimetre of paper. */
  @ParameterizedTest
  @MethodSource("jobs")
  void pipeAndHoseAreAsLongAsInThePlan(DrawingJob job) {
    List<Sheet> sheets = Drawings.sheets(job);
    Extent extent = Extent.of(job.request());
    double perMetre = Fit.of(job.units(), extent.width(), extent.height()).scale().perMetre();
    for (int f = 0; f < job.request().floors().size(); f++) {
      MarksOnPaper marks = MarksOnPaper.of(sheets.get(f));
      assertSame(lengths(marks, Pen.PIPE), pipes(job.plan(), f), perMetre);
      assertSame(lengths(marks, Pen.HOSE), hoses(job.plan(), f), perMetre);
    }
  }

  @Test
  void hoseToEveryPlaceIsDrawn() {
    LinePlan plan = OFFICE.plan();
    Sheet sheet = Drawings.sheets(OFFICE).get(0);
    MarksOnPaper marks = MarksOnPaper.of(sheet);
    long places = plan.floors().get(0).cells().size();
    long hoses = marks.lines(Pen.HOSE_OTHER).size() + marks.lines(Pen.HOSE).size();
    assertThat(places).isGreaterThan(5);
    assertThat(hoses).isGreaterThanOrEqualTo(places);
    assertThat(marks.lines(Pen.STEEL)).isNotEmpty();
  }

  @Test
  void reachEndsOnTheFloorWhereHoseIsShort() {
    assertThat(MarksOnPaper.of(Drawings.sheets(ELL).get(0)).lines(Pen.REACH)).isNotEmpty();
    assertThat(MarksOnPaper.of(Drawings.sheets(OFFICE).get(0)).lines(Pen.REACH)).isEmpty();
  }

  @Test
  void sheetsSayWhatTheLegendExplains() {
    String words = words(Drawings.sheets(OFFICE).get(1));
    assertThat(words)
        .contains("Line plan, Level 2")
        .contains("Set-up 2")
        .contains("keep-out: switchgear")
        .contains("stair 1")
        .contains("keep-out of the job file")
        .contains("place of work, by pole gun")
        .contains("not required");
    assertThat(words(Drawings.sheets(OFFICE).get(4))).contains("required: the rise of 52.5 ft");
  }

  /** By hand: slabs of 36 by 22 m and of 60 by 60 m, the machine of the office at (8, 5). */
  @Test
  void plansSayHowLargeTheSlabIsAndHowFarTheMachineStandsFromItsEdges() {
    assertThat(words(Drawings.sheets(OFFICE).get(0)))
        .contains("118'-1\"", "72'-2\"")
        .contains("26'-3\"")
        .contains("16'-5\"", "55'-9\"");
    assertThat(words(Drawings.sheets(ELL).get(1))).contains("60.00 m");
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyPlanSaysHowLargeItsSlabIs(DrawingJob job) {
    List<Sheet> sheets = Drawings.sheets(job);
    Measure measure = new Measure(job.units());
    for (int f = 0; f < job.request().floors().size(); f++) {
      Extent slab =
          Extent.of(
              job.request().floors().get(f).plate().stream()
                  .flatMap(r -> r.outline().stream())
                  .toList());
      assertThat(words(sheets.get(f)).lines())
          .contains(measure.length(Length.ofMetres(slab.width())))
          .contains(measure.length(Length.ofMetres(slab.height())));
    }
  }

  @Test
  void positionsByHeightStandOnTheirFloorsAndInTheSection() {
    List<MachineSpot> machines = TOWER.plan().machines();
    assertThat(machines).extracting(MachineSpot::floor).containsExactlyInAnyOrder(0, 6);
    List<Sheet> sheets = Drawings.sheets(TOWER);
    for (MachineSpot m : machines) {
      assertThat(words(sheets.get(m.floor()))).contains("Machine " + m.name());
      assertThat(words(sheets.get(sheets.size() - 1))).contains("Machine " + m.name());
    }
    assertThat(words(sheets.get(6))).contains("bags come up by hoist").doesNotContain("trucks");
  }

  @Test
  void sectionsSayWhereStandpipeIsRequiredAndExplainWhatIsDrawn() {
    assertThat(words(section(OFFICE))).contains("standpipe above, +36'-0\"", "beyond 3 storeys");
    assertThat(words(section(OFFICE)).lines()).contains("standpipe");
    DrawingJob low = SampleLines.job("Low", UnitSystem.SI, SampleLines.office(2));
    assertThat(low.plan().routes()).allMatch(r -> ((Route) r).pipe().metres() == 0);
    assertThat(MarksOnPaper.of(section(low)).lines(Pen.PIPE)).isEmpty();
    assertThat(words(section(low)).lines()).contains("hose").doesNotContain("standpipe");
  }

  private static Sheet section(DrawingJob job) {
    List<Sheet> sheets = Drawings.sheets(job);
    return sheets.get(sheets.size() - 1);
  }

  @Test
  void withoutAFloorThereIsNoSheet() {
    LineRequest none = LineRequest.of(List.of(), List.of());
    assertThat(Drawings.sheets(SampleLines.job("none", UnitSystem.SI, none))).isEmpty();
  }

  @Test
  void floorsWithoutWorkOrMachineAreDrawnAllTheSame() {
    LineRequest idle = LineRequest.of(SampleLines.office(2).floors(), List.of());
    List<Sheet> sheets = Drawings.sheets(SampleLines.job("", UnitSystem.SI, idle));
    assertThat(sheets).hasSize(3);
    assertThat(words(sheets.get(0)))
        .contains("Building without a name")
        .contains("nothing is sprayed from this floor");
  }

  private static String words(Sheet sheet) {
    return MarksOnPaper.of(sheet).texts.stream()
        .map(MarksOnPaper.Text::words)
        .collect(Collectors.joining("\n"));
  }

  /** Lengths on paper; the samples of the legend, 12 mm long, are no part of the drawing. */
  private static List<Double> lengths(MarksOnPaper marks, Pen pen) {
    return marks.lines(pen).stream()
        .filter(l -> l.points().get(0).x() < marks.panel())
        .map(MarksOnPaper.Line::length)
        .sorted()
        .toList();
  }

  private static List<Double> pipes(LinePlan plan, int floor) {
    return standing(plan, floor, Leg.Kind.PIPE).stream().map(l -> l.taut().metres()).toList();
  }

  private static List<Double> hoses(LinePlan plan, int floor) {
    var all = new ArrayList<Double>();
    standing(plan, floor, Leg.Kind.HOSE).forEach(l -> all.add(l.taut().metres()));
    for (SetUp s : plan.floors().get(floor).setUps()) {
      List<Leg> legs = ((Route) plan.routes().get(s.cells().get(0))).legs();
      all.add(legs.get(legs.size() - 2).taut().metres());
    }
    return all;
  }

  /** Different legs of a kind on a floor, but for the last hose and whip of each route. */
  private static Set<Leg> standing(LinePlan plan, int floor, Leg.Kind kind) {
    var legs = new HashSet<Leg>();
    plan.routes().stream()
        .filter(Route.class::isInstance)
        .map(r -> ((Route) r).legs())
        .forEach(l -> legs.addAll(l.subList(0, l.size() - 2)));
    legs.removeIf(l -> l.kind() != kind || l.floor() != floor);
    return legs;
  }

  private static void assertSame(List<Double> onPaper, List<Double> inPlan, double perMetre) {
    List<Double> sorted = inPlan.stream().sorted().toList();
    assertThat(onPaper).hasSameSizeAs(sorted);
    for (int i = 0; i < sorted.size(); i++) {
      assertThat(onPaper.get(i)).isCloseTo(sorted.get(i) * perMetre, Offset.offset(0.1));
    }
  }
}
