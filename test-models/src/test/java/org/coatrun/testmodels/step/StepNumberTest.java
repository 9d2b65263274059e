package org.coatrun.testmodels.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reals as ISO 10303-21 section 6.4.2 wants them: always with a point. */
class StepNumberTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0.",
    "1, 1.",
    "-1, -1.",
    "0.1, 0.1",
    "304.8, 304.8",
    "-0.0254, -0.0254",
    "9144.000000000001, 9144.",
    "0.30000000000000004, 0.3",
    "1e-5, 0.00001",
    "-1e-18, 0.",
    "999999999999, 999999999999."
  })
  void writesShortText(double value, String text) {
    assertThat(StepNumber.text(value)).isEqualTo(text);
  }

  @Test
  void readsBackToThirteenDigits() {
    Random random = new Random(1);
    for (int i = 0; i < 100_000; i++) {
      double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(12) - 2);
      double back = Double.parseDouble(StepNumber.text(value));
      assertThat(Math.abs(back - value))
          .isLessThanOrEqualTo(5.1e-13 * Math.max(Math.abs(value), 0.1));
    }
  }

  @Test
  void refusesWhatIsNoNumber() {
    assertThatThrownBy(() -> StepNumber.text(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("finite");
  }
}
