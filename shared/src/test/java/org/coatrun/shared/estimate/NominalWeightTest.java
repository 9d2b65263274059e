package org.coatrun.shared.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NominalWeightTest {

  // AISC Manual, part 1: a rolled shape is named by its nominal depth and its weight per foot.
  @ParameterizedTest
  @CsvSource({
    "W12X26, 26",
    "w12x26, 26",
    "W 12 x 26, 26",
    "W14×90, 90",
    "W44X335, 335",
    "HP14X73, 73",
    "C15X33.9, 33.9",
    "MC12X50, 50",
    "S24X121, 121",
    "WT7X34, 34",
    "M12.5X12.4, 12.4",
    "Wide Flange:W8X10, 10",
    "W8X31 A992, 31"
  })
  void readsPoundsPerFoot(String designation, double poundsPerFoot) {
    assertThat(NominalWeight.of(designation).orElseThrow().poundsPerFoot())
        .isCloseTo(poundsPerFoot, within(1e-9));
  }

  // ASTM A6M: W310X38.7 is the metric name of W12X26, and 26 lb/ft are 38.7 kg/m.
  // BS 4-1: serial size by mass per metre. AS/NZS 3679.1: 310UB40.4 has 40.4 kg/m.
  @ParameterizedTest
  @CsvSource({
    "W310X38.7, 38.7",
    "C250X30, 30",
    "UB305x165x40, 40",
    "UC 203 x 203 x 46, 46",
    "UKPFC 200x90x30, 30",
    "305 x 165 x 40 UKB, 40",
    "310UB40.4, 40.4",
    "250 UC 72.9, 72.9"
  })
  void readsKilogramsPerMetre(String designation, double kilogramsPerMetre) {
    assertThat(NominalWeight.of(designation).orElseThrow().kilogramsPerMetre())
        .isCloseTo(kilogramsPerMetre, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "IPE300",
        "HEB 200",
        "HSS8X8X1/2",
        "L4X4X1/2",
        "L6X4X.5",
        "2L4X4X1/2",
        "C200X75X20",
        "C8X",
        "W12",
        "PL10X200",
        "RHS200X100X6",
        "SCREW12X26",
        "W0X0"
      })
  void findsNoneWhereTheNameStatesNone(String designation) {
    assertThat(NominalWeight.of(designation)).isEmpty();
  }
}
