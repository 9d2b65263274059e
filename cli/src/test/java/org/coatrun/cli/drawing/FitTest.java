package org.coatrun.cli.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.cli.drawing.paper.Paper;
import org.coatrun.cli.report.UnitSystem;
import org.junit.jupiter.api.Test;

class FitTest {

  /** One eighth of an inch for a foot is 1 : 96. */
  @Test
  void scalesOfBothSystems() {
    assertThat(Scale.of(UnitSystem.US)).contains(new Scale("1/8\" = 1'-0\"", 96));
    assertThat(Scale.of(UnitSystem.SI).stream().map(Scale::words))
        .startsWith("1:50", "1:100", "1:200");
    assertThat(new Scale("1:200", 200).perMetre()).isEqualTo(5);
  }

  @Test
  void aFloorFitsAtTheLargestScaleThatTheSmallestGoodPaperTakes() {
    assertThat(Fit.of(UnitSystem.SI, 36, 22)).isEqualTo(new Fit(Paper.A3, scale("1:200")));
    assertThat(Fit.of(UnitSystem.SI, 10, 8)).isEqualTo(new Fit(Paper.A3, scale("1:50")));
    assertThat(Fit.of(UnitSystem.SI, 200, 150).paper()).isEqualTo(Paper.A2);
  }

  @Test
  void whateverTheSizeItFitsAndTheNextLargerScaleDoesNot() {
    Random random = new Random(7);
    for (int n = 0; n < 300; n++) {
      double width = Math.pow(10, 4 * random.nextDouble() - 0.5);
      double height = width * (0.2 + random.nextDouble());
      UnitSystem units = n % 2 == 0 ? UnitSystem.US : UnitSystem.SI;
      Fit fit = Fit.of(units, width, height);
      assertThat(fits(fit, width, height)).isTrue();
      List<Scale> scales = Scale.of(units);
      int i = scales.indexOf(fit.scale());
      if (i > 0) {
        assertThat(fits(new Fit(fit.paper(), scales.get(i - 1)), width, height)).isFalse();
      }
    }
  }

  private static Scale scale(String words) {
    return Scale.of(UnitSystem.SI).stream()
        .filter(s -> s.words().equals(words))
        .findFirst()
        .orElseThrow();
  }

  private static boolean fits(Fit fit, double width, double height) {
    Box area = SheetFrame.drawing(fit.paper());
    double k = fit.scale().perMetre();
    return width * k <= area.width() - 2 * Fit.ROOM && height * k <= area.height() - 2 * Fit.ROOM;
  }
}
