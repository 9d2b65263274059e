package org.coatrun.shared.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.coatrun.shared.surface.SectionMeasure;
import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;
import org.junit.jupiter.api.Test;

class WeightTest {

  private static final Length TEN_FEET = Length.ofFeet(10);

  // AISC Shapes Database v15.0: W12X14 has 4.16 in2, W12X26 has 7.65 in2.
  private static final Area W12X14 = Area.ofSquareInches(4.16);
  private static final Area W12X26 = Area.ofSquareInches(7.65);

  @Test
  void takesTheNominalWeightWhereTheDrawingBearsItOut() {
    Weight weight = weight("W12X26", W12X26);

    assertThat(weight.mass().pounds()).isCloseTo(260, within(1e-9));
    assertThat(weight.isDoubtful()).isFalse();
  }

  @Test
  void weighsByVolumeWhereTheNameStatesNoWeight() {
    Weight weight = weight("HSS8X8X1/2", Area.ofSquareMetres(0.01));

    assertThat(weight.mass().kilograms()).isCloseTo(0.01 * 3.048 * 7850, within(1e-9));
    assertThat(weight.nominal()).isEmpty();
    assertThat(weight.isDoubtful()).isFalse();
  }

  @Test
  void doubtsANameThatIsMoreThanThreePerCentOff() {
    // 7.65 in2 at 7,850 kg/m3 is 26.04 lb/ft: the name is 7.5 % too heavy.
    Weight weight = weight("W12X28", W12X26);

    assertThat(weight.isDoubtful()).isTrue();
    assertThat(weight.disagreement().orElseThrow()).isCloseTo(0.0754, within(1e-3));
    assertThat(weight.mass().pounds()).isCloseTo(280, within(1e-9));
  }

  @Test
  void dropsANameThatCannotBeThisSection() {
    Weight weight = weight("W12X26", W12X14);

    assertThat(weight.isDoubtful()).isTrue();
    assertThat(weight.nominal()).isEmpty();
    assertThat(weight.mass().pounds()).isCloseTo(141.5, within(0.1));
  }

  @Test
  void weighsAPlateByVolume() {
    Weight weight = Weight.of("W12X26", TEN_FEET, Volume.ofCubicMetres(0.002), Optional.empty());

    assertThat(weight.mass().kilograms()).isCloseTo(15.7, within(1e-9));
  }

  private static Weight weight(String designation, Area steel) {
    return Weight.of(
        designation,
        TEN_FEET,
        steel.times(TEN_FEET),
        Optional.of(
            new SectionMeasure(
                steel,
                Length.ofMetres(1),
                Length.ofMetres(1),
                Length.ofMetres(1),
                Length.ofMetres(1),
                SectionMeasure.Basis.SHARP,
                0,
                false)));
  }
}
