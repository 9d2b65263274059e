package org.coatrun.shared.bid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.coatrun.shared.frame.FrameClass;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.shape.Vec2;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RulingsTest {

  private static final Coated HALL =
      Steel.beam(1, "W14X22").at(Steel.place(false, "North hall Level 1", new Vec2(3, 3))).member();
  private static final Coated OFFICE =
      Steel.beam(2, "W16X26").at(Steel.place(false, "East office", new Vec2(20, 3))).member();
  private static final Coated GIRDER =
      Steel.beam(3, "W24X55")
          .of(FrameClass.PRIMARY)
          .at(Steel.place(false, "", new Vec2(9, 9)))
          .member();
  private static final Coated PURLIN =
      Steel.beam(4, "W12X14").at(Steel.place(true, "", new Vec2(9, 9))).member();
  private static final Coated COLUMN = Steel.column(5, "W12X87").member();
  private static final Coated DECK = Steel.deck(6, "Metal deck", false);
  private static final List<Coated> ALL = List.of(HALL, OFFICE, GIRDER, PURLIN, COLUMN, DECK);

  private static Rulings by(String yaml) {
    return new Rulings(Job.parse("job.yaml", yaml));
  }

  private static double hours(Rulings rulings, Coated item) {
    return rulings.of(item).hours().map(FireDuration::hours).orElseThrow();
  }

  @Test
  void theTableDecidesByFrameClassAndRoof() {
    // IBC Table 601, type I-A: frame 3 h, floor 2 h, roof 1 1/2 h
    Rulings table = by("building: {type: I-A}");

    assertThat(hours(table, COLUMN)).isEqualTo(3);
    assertThat(hours(table, GIRDER)).isEqualTo(3);
    assertThat(hours(table, OFFICE)).isEqualTo(2);
    assertThat(hours(table, DECK)).isEqualTo(2);
    assertThat(hours(table, PURLIN)).isEqualTo(1.5);
    assertThat(table.of(GIRDER).decidedBy())
        .isEqualTo("IBC Table 601, type I-A, primary structural frame");
  }

  @Test
  void reliefForRoofsIsNamedAndCanBeTakenAway() {
    Coated roofGirder =
        Steel.beam(7, "W18X35")
            .of(FrameClass.PRIMARY)
            .at(Steel.place(true, "", Vec2.ZERO))
            .member();

    // footnote a: a frame that supports only a roof, one hour less in I-A and I-B
    Ruling relieved = by("building: {type: I-B, occupancy: B}").of(roofGirder);
    assertThat(relieved.hours()).contains(FireDuration.ofHours(1));
    assertThat(relieved.decidedBy()).endsWith("footnote a");
    assertThat(hours(by("building: {type: I-B, occupancy: B, roof-relief: no}"), roofGirder))
        .isEqualTo(2);
  }

  @Test
  void theLastRuleThatMatchesAndStatesAThingWinsForThatThing() {
    Ruling ruling =
        by("""
                building: {type: I-A}
                ratings:
                  - {section: W14X22, hours: 1 h, thickness: 1 in, label: bare, reason: as before}
                  - {label: halls, space: "north HALL*", hours: 4 h, reason: way out}
                  - {section: W14X22, restrained: yes}
                """)
            .of(HALL);

    assertThat(ruling.hours()).contains(FireDuration.ofHours(4));
    assertThat(ruling.decidedBy()).isEqualTo("halls");
    assertThat(ruling.reason()).isEqualTo("rule 2 of the job file: 4 h, way out");
    assertThat(ruling.thickness())
        .contains(
            new StatedThickness(Length.ofInches(1), "rule 1 of the job file \"bare\": as before"));
    assertThat(ruling.restrained()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          storey: level 2                                      | 1 2 3 4 6
          storey: "Level 3"                                    |
          working-floor: "level *"                             | 1 2 3 4 5 6
          working-floor: Level 1                               | 1 2 3 4 5 6
          space: "*office*"                                    | 2
          role: column                                         | 5
          frame-class: primary                                 | 3 5
          frame-class: secondary                               | 1 2 4
          section: "w12 x*"                                    | 4 5
          section: deck                                        | 6
          name: "B*"                                           | 1 2 3 4
          guid: guid3                                          | 3
          guid: GUID3                                          |
          zone: [[0 m, 0 m], [10 m, 0 m], [10 m, 10 m], [0 m, 10 m]] | 1 3 4 6
          role: beam, section: W24X55                          | 3
          name: "***B**1"                                      | 1
          """)
  void oneRuleChangesExactlyWhatItMatches(String selector, String steps) {
    Rulings plain = by("building: {type: I-A}");
    Rulings ruled = by("building: {type: I-A}\nratings:\n  - {" + selector + ", hours: 4 h}\n");

    String changed =
        ALL.stream()
            .filter(c -> !ruled.of(c).equals(plain.of(c)))
            .map(c -> Long.toString(c.id().step()))
            .collect(Collectors.joining(" "));
    assertThat(changed).isEqualTo(steps == null ? "" : steps);
    ALL.stream()
        .filter(c -> !ruled.of(c).equals(plain.of(c)))
        .forEach(c -> assertThat(hours(ruled, c)).isEqualTo(4));
    assertThat(ruled.unused(ALL)).hasSize(steps == null ? 1 : 0);
  }

  @Test
  void deckIsCoatedOnlyWhereTheJobSaysSo() {
    assertThat(by("").of(DECK).coat()).isFalse();
    assertThat(by("deck: {spray: yes}").of(DECK).coat()).isTrue();
    assertThat(by("ratings: [{name: Metal*, coat: yes}]").of(DECK).coat()).isTrue();
    assertThat(by("deck: {spray: yes, hours: 1 h, thickness: 5/8 in}").of(DECK))
        .extracting(Ruling::hours, Ruling::decidedBy, Ruling::reason, Ruling::thickness)
        .containsExactly(
            Optional.of(FireDuration.ofHours(1)),
            "deck.hours",
            "deck.hours of the job file: 1 h",
            Optional.of(
                new StatedThickness(Length.ofInches(0.625), "deck.thickness of the job file")));
  }

  @Test
  void whatLeavesAnElementBareIsNamed() {
    String rule = "ratings: [{label: hoist, name: M1, coat: no, reason: carries no floor}]";

    assertThat(by("").of(DECK).bare()).contains("deck.spray, which is no");
    assertThat(by(rule.replace("M1", "\"*\"")).of(COLUMN).bare())
        .contains("rule 1 of the job file \"hoist\": carries no floor");
    assertThat(by("").of(COLUMN).bare()).isEmpty();
  }

  @Test
  void rulesThatMatchNothingAreNamed() {
    Rulings rulings =
        by(
            """
            ratings:
              - {label: attic, storey: Attic, hours: 1 h}
              - {section: W14X22, hours: 1 h}
              - {name: nothing, hours: 1 h}
            """);

    assertThat(rulings.unused(ALL)).containsExactly("attic", "rule 3");
  }

  @Test
  void starsAreReadInGoodTimeHoweverMany() {
    String text = "a".repeat(5000);
    assertThat(RuleMatch.glob("*a".repeat(200) + "b", text)).isFalse();
    assertThat(Stream.of("", "*", "**", "a*", "*a*a"))
        .allMatch(p -> p.isEmpty() || RuleMatch.glob(p, text));
  }
}
