package org.coatrun.cli.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.coatrun.cli.report.UnitSystem;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Volume;
import org.junit.jupiter.api.Test;

class MeasureTest {

  private static final Measure US = new Measure(UnitSystem.US);
  private static final Measure SI = new Measure(UnitSystem.SI);

  @Test
  void feetAndInchesCarry() {
    assertThat(US.length(Length.ofFeet(12.5))).isEqualTo("12'-6\"");
    assertThat(US.length(Length.ofFeet(11.99))).isEqualTo("12'-0\"");
    assertThat(US.length(Length.ofInches(7))).isEqualTo("0'-7\"");
    assertThat(US.length(Length.ofFeet(-3.25))).isEqualTo("−3'-3\"");
  }

  @Test
  void elevationsCarryTheirSign() {
    assertThat(US.elevation(Length.ZERO)).isEqualTo("±0'-0\"");
    assertThat(US.elevation(Length.ofFeet(36))).isEqualTo("+36'-0\"");
    assertThat(SI.elevation(Length.ofMetres(-3.5))).isEqualTo("−3.50 m");
    assertThat(SI.elevation(Length.ofMetres(0.001))).isEqualTo("±0.00 m");
  }

  @Test
  void coatingInBoardFeetOrCubicMetres() {
    assertThat(US.coating(Volume.ofBoardFeet(12345))).isEqualTo("12,345 bd ft");
    assertThat(SI.coating(Volume.ofCubicMetres(1.234))).isEqualTo("1.23 m³");
  }
}
