package org.coatrun.shared.bid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.coatrun.shared.finding.Finding;
import org.coatrun.shared.finding.WorkFinding;
import org.coatrun.shared.frame.FrameClass;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.model.Building;
import org.coatrun.shared.shape.Vec3;
import org.coatrun.shared.units.Length;
import org.junit.jupiter.api.Test;

class LineFindingsTest {

  private static final Building BUILDING =
      new Building(
          "Net Loft",
          Vec3.ZERO,
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of());

  private static final Thickness INCH =
      new Thickness.Given(Length.ofInches(1), Length.ofInches(1), "LIST", false, "row");

  private static List<Finding> of(CoatedMember member, String job, Thickness thickness) {
    Ruling ruling = new Rulings(Job.parse("job.yaml", job)).of(member);
    return new LineFindings(BUILDING).of(new RatedLine(member, ruling, thickness));
  }

  private static CoatedMember rated(String text) {
    return Steel.beam(7, "W16X26").member(/* primed= */ false, Optional.of(text));
  }

  @Test
  void showsARatingOfTheModelThatIsNotTheOneUsed() {
    String twoHours = "building: {type: I-B}";

    assertThat(of(rated("2 HR"), twoHours, INCH)).isEmpty();
    assertThat(of(rated("REI 90"), twoHours, INCH))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.code()).isEqualTo(WorkFinding.RATING_DIFFERS);
              assertThat(f.sentence()).isEqualTo("Beam B7: the model says 'REI 90', used is 2 h.");
            });
    assertThat(of(rated("see drawings"), twoHours, INCH))
        .extracting(Finding::code)
        .containsExactly(WorkFinding.RATING_UNREADABLE);
  }

  @Test
  void anUnknownClassIsAFindingOnlyWhereTheTableDecides() {
    CoatedMember unknown = Steel.beam(8, "W16X26").of(FrameClass.UNKNOWN).member();

    assertThat(of(unknown, "building: {type: I-B}", INCH))
        .extracting(Finding::code)
        .containsExactly(WorkFinding.CLASS_UNKNOWN);
    assertThat(of(unknown, "ratings: [{hours: 1 h}]", INCH)).isEmpty();
    assertThat(of(unknown, "ratings: [{coat: no}]", new Thickness.NotNeeded("bare"))).isEmpty();
  }

  @Test
  void primedSteelIsAFindingWhereItIsSprayed() {
    CoatedMember primed = Steel.beam(9, "W16X26").member(/* primed= */ true, Optional.empty());

    assertThat(of(primed, "", INCH))
        .extracting(Finding::code)
        .containsExactly(WorkFinding.PRIMED_STEEL);
    assertThat(of(primed, "", new Thickness.NotNeeded("0 h"))).isEmpty();
  }

  @Test
  void aMissingThicknessBringsItsReason() {
    Thickness missing =
        new Thickness.Missing(WorkFinding.NO_SECTION_FACTOR, "it has no W/D to read LIST by");

    assertThat(of(Steel.beam(3, "").member(), "", missing))
        .singleElement()
        .satisfies(
            f -> assertThat(f.sentence()).isEqualTo("Beam B3: it has no W/D to read LIST by."));
  }
}
