package org.coatrun.cli.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.StringWriter;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.coatrun.cli.input.JobFolder;
import org.coatrun.shared.bid.Bid;
import org.coatrun.shared.bid.Coated;
import org.coatrun.shared.bid.CoatedMember;
import org.coatrun.shared.bid.CoatedSummaries;
import org.coatrun.shared.bid.CoatedSummary;
import org.coatrun.shared.bid.RatedLine;
import org.coatrun.shared.bid.Ruling;
import org.coatrun.shared.bid.Thickness;
import org.coatrun.shared.estimate.Totals;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.frame.FrameClass;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.listing.Listing;
import org.coatrun.shared.model.ElementId;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.units.FireDuration;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Hours and thickness of the whole demonstration building. */
class BidOfTheDemonstrationTest {

  private static final String PLAIN = "building: {type: I-B, occupancy: B}\n";

  private static Demonstration demo;
  private static Results sample;

  @BeforeAll
  static void takeOff() throws Exception {
    demo = Demonstration.read();
    sample = demo.results();
  }

  private static Bid bid() {
    return sample.bid().orElseThrow();
  }

  @Test
  void sumsByRuleAndHoursAreTheLedgers() {
    BidSums sums = new BidSums(sample);
    Totals members = sample.takeoff().memberTotals();
    Totals decks = sample.takeoff().deckTotals();

    sameSum(sums.byHours(sample.takeoff().members()), members);
    sameSum(sums.byRule(sample.takeoff().members()), members);
    sameSum(sums.byHours(sample.takeoff().decks()), decks);
    sameSum(sums.byRule(sample.takeoff().decks()), decks);
    double pieces =
        bid().lines().stream().mapToDouble(l -> l.item().exposed().squareMetres()).sum();
    assertThat(pieces)
        .isCloseTo(members.exposed().plus(decks.exposed()).squareMetres(), within(1e-6));
  }

  private static void sameSum(Map<String, Totals> groups, Totals whole) {
    Collection<Totals> sums = groups.values();
    assertThat(sums.stream().mapToInt(Totals::all).sum()).isEqualTo(whole.all());
    assertThat(sums.stream().mapToDouble(t -> t.exposed().squareMetres()).sum())
        .isCloseTo(whole.exposed().squareMetres(), within(1e-6));
    assertThat(sums.stream().mapToDouble(t -> t.weight().kilograms()).sum())
        .isCloseTo(whole.weight().kilograms(), within(1e-4));
  }

  /** A rule and what it is meant to match. */
  record OneRule(String selector, Predicate<Coated> meant) {
    @Override
    public String toString() {
      return selector;
    }
  }

  static Stream<OneRule> rules() {
    return Stream.of(
        new OneRule("storey: level 4", c -> c.place().storey().equals("Level 4")),
        new OneRule("working-floor: Roof", c -> c.place().workingFloor().equals("Roof")),
        new OneRule("space: \"West office*\"", c -> c.place().space().startsWith("West office")),
        new OneRule("section: W24X55", c -> c.section().equals("W24X55")),
        new OneRule("role: column", c -> c instanceof CoatedMember m && m.role() == Role.COLUMN),
        new OneRule(
            "frame-class: secondary, storey: Level 5",
            c ->
                c instanceof CoatedMember m
                    && m.frameClass() == FrameClass.SECONDARY
                    && c.place().storey().equals("Level 5")),
        new OneRule("name: \"C2-*\"", c -> c.name().startsWith("C2-")),
        new OneRule(
            "zone: [[1 m, 1 m], [7 m, 1 m], [7 m, 6 m], [1 m, 6 m]]",
            c ->
                c.place()
                    .middle()
                    .filter(m -> m.x() < 7 && m.x() > 1 && m.y() > 1 && m.y() < 6)
                    .isPresent()));
  }

  @ParameterizedTest
  @MethodSource("rules")
  void oneRuleChangesExactlyTheMembersItMatches(OneRule rule) {
    Bid before = demo.results(PLAIN).bid().orElseThrow();
    Bid after =
        demo.results(PLAIN + "ratings: [{" + rule.selector() + ", hours: 4 h}]\n")
            .bid()
            .orElseThrow();

    Set<ElementId> meant =
        whole(before).stream()
            .filter(l -> rule.meant().test(l.item()))
            .map(l -> l.item().id())
            .collect(Collectors.toCollection(TreeSet::new));
    Set<ElementId> changed = new TreeSet<>();
    for (int i = 0; i < before.lines().size(); i++) {
      RatedLine was = before.lines().get(i);
      RatedLine is = after.lines().get(i);
      assertThat(is.item()).isEqualTo(was.item());
      if (!is.ruling().equals(was.ruling())) {
        changed.add(is.item().id());
        assertThat(is.ruling().hours()).contains(FireDuration.ofHours(4));
      } else {
        assertThat(is.thickness()).isEqualTo(was.thickness());
      }
    }
    assertThat(changed).isNotEmpty().isEqualTo(meant);
  }

  /** The first line of each element: a column's lowest piece stands for it. */
  private static Collection<RatedLine> whole(Bid bid) {
    return bid.lines().stream()
        .collect(Collectors.toMap(l -> l.item().id(), l -> l, (lowest, next) -> lowest))
        .values();
  }

  @Test
  void knowsRoofFromFloor() {
    Results plain = demo.results(PLAIN);

    // the penthouse roof carries nothing but roof; the mechanical floor is floor, on a storey
    // called Roof
    assertThat(ruling(plain, "PB1").decidedBy())
        .isEqualTo("IBC Table 601, type I-B, roof construction and secondary members");
    assertThat(ruling(plain, "PG1").decidedBy()).endsWith("primary structural frame, footnote a");
    assertThat(ruling(plain, "C4-B2").decidedBy()).endsWith("primary structural frame, footnote a");
    assertThat(ruling(plain, "C3-B2").hours()).contains(FireDuration.ofHours(2));
    assertThat(ruling(plain, "B5-B1-1").decidedBy())
        .isEqualTo("IBC Table 601, type I-B, floor construction and secondary members");
    assertThat(hours(plain, "Roof deck south")).isEqualTo(1);
    assertThat(hours(plain, "Mechanical floor west")).isEqualTo(2);
  }

  private static Ruling ruling(Results results, String mark) {
    return demo.rated(results, mark).ruling();
  }

  private static double hours(Results results, String deck) {
    return results.bid().orElseThrow().lines().stream()
        .filter(l -> l.item().name().equals(deck))
        .findFirst()
        .flatMap(l -> l.ruling().hours())
        .orElseThrow()
        .hours();
  }

  @Test
  void aColumnIsSprayedFromEachFloorItPasses() {
    // C1-B2 stands 0.25 m under Level 1 (0 m) and ends 1.2 m above Level 3; Level 2 is at 4.5 m,
    // Level 3 at 8.5 m
    List<RatedLine> pieces = bid().lines(demo.member("C1-B2").identity().id());

    assertThat(pieces)
        .extracting(l -> l.item().place().workingFloor())
        .containsExactly("Level 1", "Level 2", "Level 3");
    List<Double> heights = List.of(4.5, 4.0, 1.2);
    List<Double> lengths = List.of(4.75, 4.0, 1.2);
    for (int i = 0; i < 3; i++) {
      CoatedMember piece = (CoatedMember) pieces.get(i).item();
      assertThat(piece.place().top().orElseThrow().metres())
          .isCloseTo(heights.get(i), within(1e-6));
      assertThat(piece.length().metres()).isCloseTo(lengths.get(i), within(1e-6));
      assertThat(pieces.get(i).thickness()).isEqualTo(pieces.get(0).thickness());
    }
    assertThat(bid().lines(demo.member("G1-B2").identity().id()))
        .singleElement()
        .satisfies(
            l -> {
              assertThat(l.item().place().workingFloor()).isEqualTo("Level 1");
              assertThat(l.item().place().space()).isEqualTo("West office Level 1");
            });
  }

  @Test
  void findsCarriersWithFewerHoursThanTheirLoad() {
    assertThat(findings(demo.results(PLAIN), WorkFinding.SUPPORT_RATED_LOWER)).isEmpty();

    // one secondary beam raised: its two girders carry it, and four columns carry those
    List<Finding> found =
        findings(
            demo.results(PLAIN + "ratings: [{name: B1-B1-1, hours: 3 h}]"),
            WorkFinding.SUPPORT_RATED_LOWER);
    assertThat(found)
        .extracting(Finding::sentence)
        .containsExactlyInAnyOrder(
            "Beam G1-B1 at 2 h carries beam B1-B1-1 at 3 h.",
            "Beam G1-C1 at 2 h carries beam B1-B1-1 at 3 h.",
            "Column C1-B1 at 2 h carries beam B1-B1-1 at 3 h through beam G1-B1.",
            "Column C1-B2 at 2 h carries beam B1-B1-1 at 3 h through beam G1-B1.",
            "Column C1-C1 at 2 h carries beam B1-B1-1 at 3 h through beam G1-C1.",
            "Column C1-C2 at 2 h carries beam B1-B1-1 at 3 h through beam G1-C1.");
  }

  @Test
  void saysOnceForTheJobWhatTheJobLacks() {
    Results bare = Results.of(demo.takeoff(), bare());

    assertThat(findings(bare, WorkFinding.TYPE_NOT_STATED)).hasSize(1);
    assertThat(findings(bare, WorkFinding.NO_LISTING_ENTRY)).hasSize(1);
    assertThat(findings(demo.results("building: {type: IV-HT}"), WorkFinding.NO_HOURS))
        .isNotEmpty();
    assertThat(
            findings(
                demo.results(PLAIN + "material: {density: 12 pcf}"), WorkFinding.LISTING_DENSITY))
        .singleElement()
        .satisfies(f -> assertThat(f.sentence()).contains("12.0 pcf", "15.0 pcf", "DEMO-15"));
    assertThat(
            findings(
                demo.results(PLAIN + "ratings: [{label: attic, storey: Attic, hours: 1 h}]"),
                WorkFinding.RULE_UNUSED))
        .singleElement()
        .satisfies(f -> assertThat(f.sentence()).contains("attic"));
  }

  private static JobFolder bare() {
    return new JobFolder(Job.defaults(), List.of(), Optional.empty());
  }

  private static List<Finding> findings(Results results, WorkFinding code) {
    return results.takeoff().findings().stream().filter(f -> f.code() == code).toList();
  }

  @Test
  void namesTheNumberOfABeamOutsideTheTestedRangeAndTheNearestRow() {
    // K1, W12X14 exposed all round: W/D = 14 / 38.8 = 0.361 (PB of AISC v15.0), the table begins
    // at 0.37, and substitution is not allowed under 0.37 (IBC 722.5.2.2.1)
    assertThat(findings(demo.results(PLAIN), WorkFinding.OUTSIDE_TESTED_RANGE))
        .singleElement()
        .satisfies(
            f ->
                assertThat(f.sentence())
                    .startsWith("Beam K1: W/D 0.361 lies outside the rows of DEMO-15")
                    .contains("nearest is 0.37 (1-7/16 in)"));
  }

  @Test
  void everyOutputSaysThatTheListingIsInvented() throws Exception {
    assertThat(sample.cautions()).contains(Listing.DEMONSTRATION);
    StringWriter basis = new StringWriter();
    Basis.write(basis, sample);
    assertThat(basis.toString())
        .contains(Listing.DEMONSTRATION, "[IBC Table 601]", "building.type");
    ByteArrayOutputStream json = new ByteArrayOutputStream();
    TakeoffJson.write(json, sample, TakeoffTables.of(sample), more -> {});
    assertThat(json.toString(UTF_8)).contains(Listing.DEMONSTRATION);
    StringWriter csv = new StringWriter();
    CsvTable.write(
        csv,
        MemberColumns.of(new Sources(sample.takeoff().building()), sample),
        sample.takeoff().members());
    assertThat(csv.toString()).contains("DEMO-15 (DEMONSTRATION)");
    assertThat(findings(sample, WorkFinding.DEMONSTRATION)).hasSize(1);
  }

  @Test
  void listsSayTheSameOfPlacesWithAJobAndWithout() {
    Map<ElementId, CoatedSummary> open = CoatedSummaries.of(demo.takeoff());

    assertThat(open).isNotEmpty().isEqualTo(CoatedSummaries.of(bid()));
  }

  @Test
  void withoutAJobNothingIsRated() {
    Results open = Results.of(demo.takeoff());

    assertThat(open.bid()).isEmpty();
    assertThat(open.rated(demo.member("C1-B2").identity().id())).isEmpty();
    assertThat(open.coated(demo.member("C1-B2").identity().id()).orElseThrow().workingFloors())
        .hasSize(3);
    assertThat(open.basis()).anyMatch(l -> l.startsWith("No job file was given"));
    assertThat(open.cautions()).doesNotContain(Listing.DEMONSTRATION);
  }

  @Test
  void eachLineHasAThicknessOrSaysWhyNot() {
    assertThat(bid().lines()).allSatisfy(l -> assertThat(l.thickness().reason()).isNotBlank());
    assertThat(bid().lines()).filteredOn(l -> l.thickness() instanceof Thickness.Missing).isEmpty();
  }
}
