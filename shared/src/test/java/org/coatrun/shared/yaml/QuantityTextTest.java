package org.coatrun.shared.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Density;
import org.coatrun.shared.units.FireDuration;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Mass;
import org.coatrun.shared.units.Pressure;
import org.coatrun.shared.units.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTextTest {

  @ParameterizedTest(name = "{0} is {1} in")
  @CsvSource({
    "250 ft, 3000",
    "36ft, 432",
    "1/2 in, 0.5",
    "1-1/2 in, 1.5",
    "1 1/2 in, 1.5",
    "25.4 mm, 1",
    "6 ft 4 in, 76",
    "0.5 in, 0.5",
    ".5 in, 0.5",
    "-3 ft, -36",
    "-3 ft 6 in, -42"
  })
  void readsLengths(String text, double inches) {
    assertThat(QuantityText.parse(text, Length.class).inches()).isCloseTo(inches, within(1e-9));
  }

  @Test
  void readsWhatTheTradeWrites() {
    assertThat(QuantityText.parse("65 psi", Pressure.class).psi()).isCloseTo(65, within(1e-9));
    assertThat(QuantityText.parse("2 h", FireDuration.class).minutes()).isEqualTo(120);
    assertThat(QuantityText.parse("15 pcf", Density.class).poundsPerCubicFoot())
        .isCloseTo(15, within(1e-9));
    assertThat(QuantityText.parse("44,000 lb", Mass.class).pounds()).isCloseTo(44000, within(1e-6));
    assertThat(QuantityText.parse("40 \u00B0F", Temperature.class).fahrenheit())
        .isCloseTo(40, within(1e-9));
    assertThat(QuantityText.parse("10 m\u00B2", Area.class).squareMetres()).isEqualTo(10);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"ft", "12", "12 furlong", "1/0 in", "1,00 ft", "12 ft2", "1e3 ft", "", "- ft"})
  void refusesWhatIsNoLength(String text) {
    assertThatThrownBy(() -> QuantityText.parse(text, Length.class))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageEndingWith(".");
  }

  @Test
  void saysWhichUnitsThereAre() {
    assertThatThrownBy(() -> QuantityText.parse("12 ft2", Length.class))
        .hasMessage("'ft2' is no unit of a length; use one of ft, in, m, mm.");
    assertThatThrownBy(() -> QuantityText.parse("long", Length.class))
        .hasMessage("'long' is not a length; write a number and one of ft, in, m, mm.");
  }
}
