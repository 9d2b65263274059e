package org.coatrun.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundedTest {

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "1.5, 1.5",
    "100, 100",
    "1200000, 1200000",
    "0.1234565, 0.123456",
    "0.1234575, 0.123458",
    "-0.0000001, 0",
    "1e21, 1000000000000000000000"
  })
  void roundsToSixDecimalsAndDropsZeros(double value, String text) {
    assertThat(Rounded.plain(value).toString()).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"0.1234567894, 0.123456789", "2e-10, 0", "3.0, 3"})
  void roundsAreasToNine(double value, String text) {
    assertThat(Rounded.fine(value).toString()).isEqualTo(text);
  }

  /** The shortest decimals of a number decide, as the standard library rounds them. */
  @Test
  void roundsAsDecimalArithmeticDoes() {
    Random random = new Random(7);
    for (int i = 0; i < 200_000; i++) {
      double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(14) - 6);
      double tie = Math.rint(value * 1e6) / 1e6 + 0.0000005;
      for (double d : new double[] {value, tie}) {
        assertThat(Rounded.plain(d))
            .isEqualByComparingTo(BigDecimal.valueOf(d).setScale(6, RoundingMode.HALF_EVEN));
      }
    }
  }
}
