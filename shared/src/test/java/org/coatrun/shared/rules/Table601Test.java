package org.coatrun.shared.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.coatrun.shared.frame.FrameClass;
import org.coatrun.shared.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Hours of IBC Table 601 with footnotes a and b, as amended Chicago tables and copies print them.
 */
class Table601Test {

  @ParameterizedTest(name = "{0}: frame {1}, floor {2}, roof {3}")
  @CsvSource({
    "IA, 3, 2, 1.5",
    "IB, 2, 2, 1",
    "IIA, 1, 1, 1",
    "IIB, 0, 0, 0",
    "IIIA, 1, 1, 1",
    "IIIB, 0, 0, 0",
    "VA, 1, 1, 1",
    "VB, 0, 0, 0"
  })
  void printsTheHoursOfTheTable(ConstructionType type, double frame, double floor, double roof) {
    assertThat(hours(type, Occupancy.B, FrameFacts.floor(FrameClass.PRIMARY))).isEqualTo(frame);
    assertThat(hours(type, Occupancy.B, FrameFacts.floor(FrameClass.SECONDARY))).isEqualTo(floor);
    FrameFacts lowRoof = FrameFacts.roof(FrameClass.SECONDARY, Length.ofFeet(12));
    assertThat(hours(type, Occupancy.B, lowRoof)).isEqualTo(roof);
  }

  @ParameterizedTest(name = "a frame under a roof only, {0}: {1} h")
  @CsvSource({"IA, 2", "IB, 1", "IIA, 1", "IIIA, 1", "VA, 1", "IIB, 0"})
  void takesOneHourOffAFrameThatSupportsOnlyARoof(ConstructionType type, double hours) {
    FrameFacts column = new FrameFacts(FrameClass.PRIMARY, false, true, Optional.empty());
    assertThat(hours(type, Occupancy.B, column)).isEqualTo(hours);
  }

  @ParameterizedTest(name = "{0} at {1} ft: {2} h")
  @CsvSource({
    "B, 19.99, 1.5",
    "B, 20, 0",
    "A, 25, 0",
    "F_2, 20, 0",
    "S_2, 20, 0",
    "F_1, 30, 1.5",
    "H, 30, 1.5",
    "M, 30, 1.5",
    "S_1, 30, 1.5"
  })
  void leavesHighRoofsBareExceptInFourGroups(Occupancy group, double feet, double hours) {
    FrameFacts purlin = FrameFacts.roof(FrameClass.SECONDARY, Length.ofFeet(feet));
    assertThat(hours(ConstructionType.IA, group, purlin)).isEqualTo(hours);
  }

  @Test
  void keepsTheRatingWhereTheHeightIsNotKnown() {
    FrameFacts purlin = new FrameFacts(FrameClass.SECONDARY, true, true, Optional.empty());
    assertThat(hours(ConstructionType.IB, Occupancy.B, purlin)).isEqualTo(1);
  }

  @Test
  void statesNoHoursForSteelInHeavyTimber() {
    Table601.Rating rating =
        Table601.of(ConstructionType.IV_HT, Occupancy.B, FrameFacts.floor(FrameClass.PRIMARY));
    assertThat(rating.hours()).isEmpty();
    assertThat(rating.reason()).contains("no hours for steel");
  }

  @Test
  void saysWhichRowAndFootnoteDecided() {
    FrameFacts girder = FrameFacts.roof(FrameClass.PRIMARY, Length.ofFeet(12));
    assertThat(Table601.of(ConstructionType.IA, Occupancy.B, girder).reason())
        .isEqualTo(
            "IBC Table 601, type I-A, primary structural frame: 3 h, less 1 h by footnote a:"
                + " supports only a roof");
  }

  private static double hours(ConstructionType type, Occupancy occupancy, FrameFacts facts) {
    return Table601.of(type, occupancy, facts).hours().orElseThrow().hours();
  }
}
