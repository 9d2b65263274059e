package org.coatrun.shared.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.coatrun.shared.model.SectionDesignation.Family;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SectionDesignationTest {

  /** Forms of the AISC Shapes Database v15 and of EN 10365, EN 10210 and AS/NZS 3679 tables. */
  @ParameterizedTest
  @CsvSource({
    "W12X26, I_SHAPE, W12X26",
    "W-Wide Flange:W12x26:245981, I_SHAPE, W12X26",
    "M_W-Wide Flange:W310X38.7, I_SHAPE, W310X38.7",
    "W 12 x 26, I_SHAPE, W12X26",
    "HP14X73, I_SHAPE, HP14X73",
    "S24X121, I_SHAPE, S24X121",
    "M12.5X12.4, I_SHAPE, M12.5X12.4",
    "C12X20.7, CHANNEL, C12X20.7",
    "MC12X50, CHANNEL, MC12X50",
    "WT7X34, TEE, WT7X34",
    "L4X4X1/2, ANGLE, L4X4X1/2",
    "L3-1/2X3X5/16, ANGLE, L3-1/2X3X5/16",
    "2L4X4X1/2, ANGLE, 2L4X4X1/2",
    "HSS8X8X1/2, HOLLOW, HSS8X8X1/2",
    "HSS8X8X.500, HOLLOW, HSS8X8X.500",
    "HSS6.625X0.280, ROUND_HOLLOW, HSS6.625X0.280",
    "Pipe4STD, ROUND_HOLLOW, PIPE4STD",
    "IPE200, I_SHAPE, IPE200",
    "IPE A 200, I_SHAPE, IPEA200",
    "HEA 180, I_SHAPE, HEA180",
    "HE 200 A, I_SHAPE, HE200A",
    "HE200B, I_SHAPE, HE200B",
    "UB 305x165x40, I_SHAPE, UB305X165X40",
    "UB-Universal Beam:305x165x40UB, I_SHAPE, 305X165X40UB",
    "UKC 203x203x46, I_SHAPE, UKC203X203X46",
    "310UB40.4, I_SHAPE, 310UB40.4",
    "PFC 300x100x46, CHANNEL, PFC300X100X46",
    "150PFC, CHANNEL, 150PFC",
    "UPN 200, CHANNEL, UPN200",
    "U200, CHANNEL, U200",
    "CHS 219.1x6.3, ROUND_HOLLOW, CHS219.1X6.3",
    "CHS219.1x6.3, ROUND_HOLLOW, CHS219.1X6.3",
    "SHS 100x100x5, HOLLOW, SHS100X100X5",
    "RHS200X100X8, HOLLOW, RHS200X100X8",
    "RHS 200*100*8, HOLLOW, RHS200X100X8",
    "L 100x100x10, ANGLE, L100X100X10",
    "'L100*10', ANGLE, L100X10",
    "75x75x6EA, ANGLE, 75X75X6EA",
    "'H-300x150x6,5x9', I_SHAPE, H-300X150X6.5X9",
    "18K5, JOIST, 18K5",
    "24LH08, JOIST, 24LH08",
    "PL10*200, FLAT, PL10X200",
    "PL3/8X6, FLAT, PL3/8X6",
    "Z200X2.0, ZED, Z200X2.0",
    "C200X75X20X2, CHANNEL, C200X75X20X2"
  })
  void findsTheDesignation(String text, Family family, String name) {
    var found = SectionDesignation.find(text);
    assertThat(found).isPresent();
    assertThat(found.get().family()).isEqualTo(family);
    assertThat(found.get().text()).isEqualTo(name);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "Beam",
        "C25/30",
        "C30",
        "300x600",
        "C 300x600",
        "S 300x600",
        "Concrete-Rectangular Beam:12 x 24",
        "M12X35",
        "Wall-1",
        "Level 2",
        "GL24h",
        "B500B",
        "W1",
        "Type W12",
        "1 Hour UL Y708"
      })
  void findsNothingWhereNoSectionIsNamed(String text) {
    assertThat(SectionDesignation.find(text)).isEmpty();
  }

  /** By definition of the designations: AISC W12X26 is 26 lb/ft, UB 305x165x40 is 40 kg/m. */
  @ParameterizedTest
  @CsvSource({
    "W12X26, 38.692",
    "C12X20.7, 30.805",
    "WT7X34, 50.597",
    "W310X38.7, 38.7",
    "UB 305x165x40, 40",
    "310UB40.4, 40.4",
    "PFC 300x100x46, 46",
    "HD 400x187, 187"
  })
  void statesTheNominalWeight(String text, double kilogramsPerMetre) {
    var weight = SectionDesignation.find(text).orElseThrow().nominalWeight().orElseThrow();
    assertThat(weight.kilogramsPerMetre()).isCloseTo(kilogramsPerMetre, within(0.001));
  }

  @Test
  void statesNoWeightWhereTheDesignationDoesNot() {
    assertThat(SectionDesignation.find("HSS8X8X1/2").orElseThrow().nominalWeight()).isEmpty();
    assertThat(SectionDesignation.find("IPE200").orElseThrow().nominalWeight()).isEmpty();
  }
}
