package org.coatrun.shared.bid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.listing.Listing;
import org.coatrun.shared.rules.MemberKind;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.SectionFactor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The listings here are invented for these checks. */
class ThicknessFinderTest {

  private static final Listing BEAMS =
      listing(
          """
          name: BEAMS
          minimum-thickness: 3/8 in
          beams:
            - {section: W8X28, factor: 0.8116, hours: 2 h, thickness: 1 in, restraint: unrestrained}
            - {section: W8X28, factor: 0.8116, hours: 2 h, thickness: 1/2 in, restraint: restrained}
          """);

  private static final Listing TABLE =
      listing(
          """
          name: TABLE
          rounding: millimetre
          minimum-thickness: 10 mm
          tables:
            - kinds: [column]
              by: Hp/A
              hours: 90 min
              critical-temperature: 550 C
              rows: [{factor: 80, thickness: 14 mm}, {factor: 120, thickness: 20 mm}, {factor: 200, thickness: 27 mm}]
            - kinds: [column]
              by: Hp/A
              hours: 90 min
              critical-temperature: 500 C
              rows: [{factor: 80, thickness: 17 mm}, {factor: 120, thickness: 24 mm}]
            - kinds: [column]
              by: Hp/A
              hours: 90 min
              critical-temperature: 600 C
              rows: [{factor: 80, thickness: 11 mm}, {factor: 120, thickness: 15 mm}]
          """);

  private static final Listing FORMULAS =
      listing(
          """
          name: FORMULAS
          minimum-thickness: 0 in
          column-equations: [{c1: 60, c2: 30, smallest: 0.5, largest: 3}]
          hollow-equations: [{c3: 200, c4: 10, smallest: 0.2, largest: 0.6}]
          decks: [{hours: 1 h, thickness: 3/8 in}, {hours: 3 h, thickness: 7/8 in}]
          """);

  private static Listing listing(String yaml) {
    return Listing.parse("list.yaml", yaml, f -> "");
  }

  private static Ruling hours(double hours) {
    return new Ruling(
        Optional.of(FireDuration.ofHours(hours)),
        "rule 1",
        "rule 1",
        Optional.empty(),
        false,
        Optional.empty(),
        Optional.empty());
  }

  private static Ruling restrained(double hours) {
    Ruling r = hours(hours);
    return new Ruling(
        r.hours(),
        r.decidedBy(),
        r.reason(),
        Optional.empty(),
        true,
        Optional.empty(),
        Optional.empty());
  }

  private static Thickness find(Coated item, Ruling ruling, Listing... listings) {
    return new ThicknessFinder(Job.defaults(), List.of(listings)).of(item, ruling, List.of());
  }

  private static Thickness.Given given(Thickness thickness) {
    assertThat(thickness).describedAs(thickness.reason()).isInstanceOf(Thickness.Given.class);
    return (Thickness.Given) thickness;
  }

  private static void missing(Thickness thickness, WorkFinding code, String... words) {
    assertThat(thickness).isInstanceOf(Thickness.Missing.class);
    assertThat(((Thickness.Missing) thickness).code()).isEqualTo(code);
    assertThat(thickness.reason()).contains(words);
  }

  // IBC 722.5.2.2 (equation from memory), W/D of AISC v15.0: W over PA (DG 19); regression values.
  @ParameterizedTest
  @CsvSource({
    "W18X35, 0.671785, 1.1099, 1.125",
    "W16X26, 0.556745, 1.2203, 1.25",
    "W12X14, 0.402299, 1.4084, 1.4375",
    "W24X76, 1.041096, 0.8602, 0.875"
  })
  void substitutesABeamForTheListedOne(String section, double wd, double exact, double rounded) {
    Thickness.Given g =
        given(find(Steel.beam(1, section).weightOverPerimeter(wd).member(), hours(2), BEAMS));

    assertThat(g.exact().inches()).isCloseTo(exact, within(6e-5));
    assertThat(g.design().inches()).isCloseTo(rounded, within(1e-9));
    assertThat(g.reason()).contains("(0.812 + 0.60) / (" + String.format("%.3f", wd), "W8X28");
    assertThat(g.demonstration()).isFalse();
  }

  @Test
  void keepsTheLimitsOfSubstitution() {
    // limit 1: W/D 0.37
    missing(
        find(Steel.beam(1, "W8X10").weightOverPerimeter(0.367).member(), hours(2), BEAMS),
        WorkFinding.SUBSTITUTION_REFUSED,
        "0.367 is under 0.37");
    // limit 2: 3/8 in
    Listing thin =
        listing(
            "name: T\nminimum-thickness: 0 in\nbeams: [{section: W8X28, factor: 0.8116, hours: 1 h,"
                + " thickness: 1/2 in}]");
    assertThat(
            given(
                    find(
                        Steel.beam(1, "W36X302").weightOverPerimeter(2.496).member(),
                        hours(1),
                        thin))
                .design())
        .isEqualTo(Length.ofInches(0.375));
    // limit 3: 1 h
    missing(
        find(Steel.beam(1, "W16X26").weightOverPerimeter(0.55).member(), hours(0.5), thin),
        WorkFinding.SUBSTITUTION_REFUSED,
        "under 1 h");
  }

  @Test
  void restrainedSubstitutionAsksForACompactSection() {
    Steel beam = Steel.beam(1, "W18X35").weightOverPerimeter(0.671785);

    // limit 4; the unrestrained beam of the listing serves where restrained may not be used
    assertThat(given(find(beam.compactSection().member(), restrained(2), BEAMS)).exact().inches())
        .isCloseTo(1.1099 / 2, within(6e-5));
    assertThat(given(find(beam.member(), restrained(2), BEAMS)).exact().inches())
        .isCloseTo(1.1099, within(6e-5));
  }

  @Test
  void readsBetweenRowsAndNeverBeyondThem() {
    Steel column = Steel.column(1, "HEB200");

    Thickness.Given g = given(find(column.by(new SectionFactor(150)).member(), hours(1.5), TABLE));
    assertThat(g.exact().millimetres()).isCloseTo(20 + 7 * 30.0 / 80, within(1e-9));
    assertThat(g.design().millimetres()).isCloseTo(23, within(1e-9));
    assertThat(g.reason()).contains("between 120 (20 mm) and 200 (27 mm)", "22.63 mm", "23 mm");
    missing(
        find(column.by(new SectionFactor(200.5)).member(), hours(1.5), TABLE),
        WorkFinding.OUTSIDE_TESTED_RANGE,
        "Hp/A 200.5 1/m",
        "nearest is 200 (27 mm)");
    missing(
        find(column.by(new SectionFactor(79.9)).member(), hours(1.5), TABLE),
        WorkFinding.OUTSIDE_TESTED_RANGE,
        "nearest is 80 (14 mm)");
  }

  @Test
  void usesTheTableForTheJobsCriticalTemperatureOrCooler() {
    CoatedMember column = Steel.column(1, "HEB300").by(new SectionFactor(100)).member();
    Job cool = Job.parse("job.yaml", "thickness: {critical-temperature: 520 C}");
    Job hot = Job.parse("job.yaml", "thickness: {critical-temperature: 650 C}");

    assertThat(given(find(column, hours(1.5), TABLE)).design().millimetres())
        .isCloseTo(17, within(1e-9));
    assertThat(byJob(cool, column)).isCloseTo(21, within(1e-9));
    assertThat(byJob(hot, column)).isCloseTo(13, within(1e-9));
  }

  private static double byJob(Job job, CoatedMember column) {
    return given(new ThicknessFinder(job, List.of(TABLE)).of(column, hours(1.5), List.of()))
        .design()
        .millimetres();
  }

  @Test
  void solvesTheEquationsWithinTheirRange() {
    // IBC 722.5.1.3: h = R / [C1 (W/D) + C2] = 120 / (60 x 1 + 30) = 1.3333 in
    Thickness.Given column =
        given(find(Steel.column(1, "W12X72").weightOverPerimeter(1).member(), hours(2), FORMULAS));
    assertThat(column.exact().inches()).isCloseTo(120.0 / 90, within(1e-9));
    assertThat(column.design().inches()).isCloseTo(1.375, within(1e-9));
    assertThat(column.reason()).contains("120 min / [60 x 1.000 + 30]", "1.3333 in", "1-3/8 in");

    // h = (R - C4) / (C3 A/P) = (120 - 10) / (200 x 0.422) = 1.3033 in; A/P of HSS8X8X1/2, AISC
    Thickness.Given tube =
        given(
            find(
                Steel.column(2, "HSS8X8X1/2")
                    .as(MemberKind.HOLLOW_COLUMN)
                    .by(SectionFactor.ofAreaOverPerimeterInches(0.422))
                    .member(),
                hours(2),
                FORMULAS));
    assertThat(tube.exact().inches()).isCloseTo(110 / 84.4, within(1e-9));

    missing(
        find(Steel.column(1, "W14X500").weightOverPerimeter(3.01).member(), hours(2), FORMULAS),
        WorkFinding.OUTSIDE_TESTED_RANGE,
        "W/D 3.010 lies outside 0.5 to 3");
  }

  @Test
  void anEntryForMoreHoursHoldsForFewerAndNeverTheOtherWay() {
    CoatedDeck deck = Steel.deck(9, "Deck", false);

    assertThat(given(find(deck, hours(1), FORMULAS)).design().inches())
        .isCloseTo(0.375, within(1e-9));
    Thickness.Given two = given(find(deck, hours(2), FORMULAS));
    assertThat(two.design().inches()).isCloseTo(0.875, within(1e-9));
    assertThat(two.reason()).contains("3 h (listed for more than 2 h)");
    missing(find(deck, hours(4), FORMULAS), WorkFinding.NO_LISTING_ENTRY, "4 h");
  }

  @Test
  void asksTheListingsInOrderAndOnlyTheNamedOneWhereOneIsNamed() {
    CoatedMember column = Steel.column(1, "W12X72").by(new SectionFactor(133.97)).member();

    assertThat(given(find(column, hours(1.5), FORMULAS, TABLE)).listing()).isEqualTo("FORMULAS");
    assertThat(given(find(column, hours(1.5), TABLE, FORMULAS)).listing()).isEqualTo("TABLE");
    Ruling named =
        new Ruling(
            hours(1.5).hours(),
            "",
            "",
            Optional.empty(),
            false,
            Optional.of("FORMULAS"),
            Optional.empty());
    assertThat(given(find(column, named, TABLE, FORMULAS)).listing()).isEqualTo("FORMULAS");
  }

  @Test
  void whatHasNoFactorOrNoHoursHasNoThicknessUnlessStated() {
    CoatedMember plate = Steel.beam(1, "PL10").as(MemberKind.OTHER).member();
    Ruling open =
        new Ruling(
            Optional.empty(), "", "", Optional.empty(), false, Optional.empty(), Optional.empty());
    Ruling stated =
        new Ruling(
            Optional.empty(),
            "",
            "",
            Optional.empty(),
            false,
            Optional.empty(),
            Optional.of(new StatedThickness(Length.ofInches(1), "rule 7 of the job file")));

    missing(
        find(Steel.beam(1, "").member(), hours(2), BEAMS), WorkFinding.NO_SECTION_FACTOR, "W/D");
    missing(find(plate, open, BEAMS), WorkFinding.NO_HOURS, "no hours");
    assertThat(given(find(plate, stated, BEAMS)))
        .extracting(Thickness.Given::design, Thickness.Given::reason)
        .containsExactly(Length.ofInches(1), "stated by rule 7 of the job file");
    assertThat(find(plate, hours(0), BEAMS)).isInstanceOf(Thickness.NotNeeded.class);
    Job job = Job.parse("job.yaml", "thickness: {without-factor: 1-1/4 in}");
    assertThat(given(new ThicknessFinder(job, List.of()).of(plate, hours(2), List.of())).design())
        .isEqualTo(Length.ofInches(1.25));
  }

  @Test
  void aPlateTakesTheThickestOfWhatItIsOnAtItsOwnHours() {
    CoatedMember plate = Steel.beam(1, "PL10").as(MemberKind.OTHER).member();
    CoatedMember heavy = Steel.beam(2, "W24X76").weightOverPerimeter(1.041096).member();
    CoatedMember light = Steel.beam(3, "W16X26").weightOverPerimeter(0.556745).member();

    Thickness.Given g =
        given(
            new ThicknessFinder(Job.defaults(), List.of(BEAMS))
                .of(plate, hours(2), List.of(heavy, light)));
    assertThat(g.design().inches()).isCloseTo(1.25, within(1e-9));
    assertThat(g.reason()).startsWith("as beam B3, which it is on (common practice): ");
  }
}
