package org.coatrun.shared.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.coatrun.shared.estimate.Lines.GROUND;
import static org.coatrun.shared.estimate.Lines.UPPER;
import static org.coatrun.shared.estimate.Lines.building;
import static org.coatrun.shared.estimate.Lines.deck;
import static org.coatrun.shared.estimate.Lines.measured;
import static org.coatrun.shared.estimate.Lines.member;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.LedgerFinding;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.model.Deck;
import org.coatrun.shared.model.Member;
import org.coatrun.shared.model.Role;
import org.coatrun.shared.model.Substance;
import org.coatrun.shared.surface.Measurement;
import org.coatrun.shared.surface.Surfaces;
import org.junit.jupiter.api.Test;

class TakeoffTest {

  private static final Surfaces NOTHING = Surfaces.of(Map.of(), List.of());

  private static final Member BEAM = member(10, Substance.STEEL, Role.BEAM, "IPE200", UPPER);
  private static final Member COLUMN = member(11, Substance.STEEL, Role.COLUMN, "HEB200", GROUND);
  private static final Member CONCRETE = member(12, Substance.CONCRETE, Role.BEAM, "", UPPER);
  private static final Member BOLT = member(13, Substance.STEEL, Role.FASTENER, "", null);
  private static final Member UNKNOWN = member(14, Substance.UNKNOWN, Role.BEAM, "", UPPER);
  private static final Member TWISTED = member(15, Substance.STEEL, Role.BEAM, "IPE200", UPPER);
  private static final Member FORGOTTEN = member(16, Substance.STEEL, Role.BEAM, "IPE200", null);
  private static final Deck SHEET = deck(20, Deck.Form.SHEET, UPPER);
  private static final Deck SLAB = deck(21, Deck.Form.SLAB_ON_DECK, UPPER);

  private static final Surfaces SURFACES =
      surfaces(
          measured(10, 0.7),
          measured(11, 0.8),
          new Measurement.Unresolved(
              TWISTED.id(), LedgerFinding.NOT_MEASURED, "twisted", "a twisted sweep"));

  private static final List<Member> MEMBERS =
      List.of(BEAM, COLUMN, CONCRETE, BOLT, UNKNOWN, TWISTED, FORGOTTEN);

  @Test
  void putsEachElementIntoOneColumn() {
    Takeoff takeoff = takeoff(MEMBERS);
    Totals totals = takeoff.memberTotals();

    assertThat(totals.counted()).isEqualTo(2);
    assertThat(totals.leftOut()).isEqualTo(2);
    assertThat(totals.unresolved()).isEqualTo(3);
    assertThat(totals.all()).isEqualTo(MEMBERS.size());
    assertThat(line(takeoff, CONCRETE).outcome().reason())
        .isEqualTo("concrete, by its material \"concrete\"");
    assertThat(line(takeoff, TWISTED).outcome().reason()).isEqualTo("a twisted sweep");
  }

  @Test
  void reportsEachUnresolvedElementUnlessItIsReportedAlready() {
    Finding known =
        new Finding(LedgerFinding.NOT_MEASURED, "quay.ifc", 7, 16, "guid16", "In better words.");
    List<Finding> findings =
        TakeoffAssembly.assemble(building(MEMBERS, List.of(), List.of(known)), SURFACES).findings();

    assertThat(findings).extracting(Finding::step).containsExactlyInAnyOrder(14L, 15L, 16L);
    assertThat(findings).contains(known);
  }

  @Test
  void ordersLinesFromTheLowestStoreyUpAndThoseWithoutLast() {
    assertThat(takeoff(MEMBERS).members())
        .extracting(line -> line.identity().id().step())
        .containsExactly(11L, 10L, 12L, 14L, 15L, 13L, 16L);
  }

  @Test
  void sumsOfGroupsAddUpToTheWhole() {
    Takeoff takeoff = takeoff(MEMBERS);

    for (Map<String, Totals> groups :
        List.of(takeoff.membersByStorey(), takeoff.membersBySection(), takeoff.membersByRole())) {
      assertThat(groups.values().stream().mapToInt(Totals::all).sum()).isEqualTo(MEMBERS.size());
      assertThat(groups.values().stream().mapToDouble(t -> t.exposed().squareMetres()).sum())
          .isCloseTo(takeoff.memberTotals().exposed().squareMetres(), within(1e-12));
    }
    assertThat(takeoff.membersByStorey().keySet()).containsExactly("Ground", "Upper", "");
    assertThat(takeoff.membersByStorey().get("Upper").exposed().squareMetres())
        .isCloseTo(0.7, within(1e-12));
  }

  @Test
  void findsTheSectionFactorFromWhatIsHeated() {
    Quantities beam = line(takeoff(MEMBERS), BEAM).outcome().quantities().orElseThrow();

    assertThat(beam.sectionFactor().orElseThrow().perMetre()).isCloseTo(800, within(1e-9));
    // Hp/A in 1/m times W/D in lb/ft/in is 133.97 for steel at 490 lb/ft3.
    assertThat(beam.weightOverPerimeter().orElseThrow()).isCloseTo(133.97 / 800, within(1e-4));
  }

  @Test
  void weighsTheSheetOfADeckButNoConcrete() {
    Takeoff takeoff =
        TakeoffAssembly.assemble(
            building(List.of(), List.of(SHEET, SLAB), List.of()),
            surfaces(measured(20, 0.5), measured(21, 0.5)));

    assertThat(takeoff.deckTotals().counted()).isEqualTo(2);
    assertThat(takeoff.deckTotals().weight().kilograms()).isCloseTo(7.85, within(1e-9));
  }

  @Test
  void refusesToLoseAnElement() {
    Building building = building(MEMBERS, List.of(), List.of());

    assertThatThrownBy(() -> new Takeoff(building, List.of(), List.of(), List.of(), NOTHING))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("without a line");
  }

  @Test
  void refusesToCountAnElementTwice() {
    List<MemberLine> lines = takeoff(List.of(BEAM)).members();
    Building building = building(List.of(BEAM), List.of(), List.of());

    assertThatThrownBy(
            () ->
                new Takeoff(
                    building, List.of(lines.get(0), lines.get(0)), List.of(), List.of(), NOTHING))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("two lines");
  }

  private static Takeoff takeoff(List<Member> members) {
    return TakeoffAssembly.assemble(building(members, List.of(), List.of()), SURFACES);
  }

  private static MemberLine line(Takeoff takeoff, Member member) {
    return takeoff.members().stream()
        .filter(line -> line.member().equals(member))
        .findFirst()
        .orElseThrow();
  }

  private static Surfaces surfaces(Measurement... measurements) {
    return Surfaces.of(
        Arrays.stream(measurements).collect(Collectors.toMap(Measurement::id, m -> m)), List.of());
  }
}
