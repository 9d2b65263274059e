package org.coatrun.cli.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.coatrun.cli.drawing.paper.Box;
import org.coatrun.shared.shape.Vec2;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HatchTest {

  private static final List<List<Vec2>> FRAME =
      List.of(new Box(0, 0, 100, 60).ring(), new Box(30, 20, 70, 40).ring());

  /** Lines a spacing apart, times the spacing, make up the area: 100 × 60 less 40 × 20. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 30, 45, 90, 135})
  void linesFillTheAreaAndLeaveTheHoleOut(double degrees) {
    List<List<Vec2>> lines = Hatch.lines(FRAME, degrees, 0.5);
    double area = 0.5 * lines.stream().mapToDouble(l -> l.get(0).distance(l.get(1))).sum();
    assertThat(area).isCloseTo(5200, Percentage.withPercentage(2));
    assertThat(lines)
        .noneMatch(
            l -> {
              Vec2 middle = l.get(0).plus(l.get(1)).times(0.5);
              return new Box(30.01, 20.01, 69.99, 39.99).contains(middle);
            });
  }

  @Test
  void aLineIsCutAtTheEdgeAndAtTheHole() {
    List<List<Vec2>> kept = Hatch.inside(FRAME, new Vec2(-10, 30), new Vec2(90, 30));
    assertThat(kept).hasSize(2);
    assertThat(kept.get(0).get(0).x()).isCloseTo(0, Offset.offset(1e-9));
    assertThat(kept.get(0).get(1).x()).isCloseTo(30, Offset.offset(1e-9));
    assertThat(kept.get(1).get(0).x()).isCloseTo(70, Offset.offset(1e-9));
    assertThat(kept.get(1).get(1).x()).isCloseTo(90, Offset.offset(1e-9));
  }
}
