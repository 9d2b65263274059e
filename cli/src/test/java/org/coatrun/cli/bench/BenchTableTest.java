package org.coatrun.cli.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** What a benchmark makes of its times. */
class BenchTableTest {

  private static Growth growth(DoubleUnaryOperator time) {
    return Growth.of(
        DoubleStream.of(1000, 2000, 4000, 8000)
            .mapToObj(n -> new Growth.Point(n, time.applyAsDouble(n)))
            .toList());
  }

  @Test
  void aPowerOfTheSizeShowsItsExponent() {
    assertThat(growth(n -> 3e-3 * n).measured()).isCloseTo(1, within(1e-9));
    assertThat(growth(n -> 5e-6 * n * n).measured()).isCloseTo(2, within(1e-9));
  }

  @Test
  void sizeTimesItsLogarithmShowsTheExponentThatStandsBeside() {
    Growth g = growth(n -> 1e-4 * n * Math.log(n));
    assertThat(g.measured()).isCloseTo(g.nLogN(), within(1e-12)).isBetween(1.1, 1.2);
  }

  @Test
  void oneSizeShowsNoGrowth() {
    var once = new Growth.Point(1000, 1);
    assertThatThrownBy(() -> Growth.of(List.of(once, once)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aRowShowsTimeRateMemoryAndRatio() {
    var table = new BenchTable(List.of("ours", "theirs"), Map.of("ours", "theirs"));
    table.add(new BenchTable.Row("small", 100, Map.of("ours", timed(1), "theirs", timed(4))));
    table.add(new BenchTable.Row("large", 200, Map.of("ours", timed(2), "theirs", timed(16))));
    assertThat(table.text())
        .isEqualTo(
            """
            | Model | Elements | ours | theirs |
            | --- | --: | --- | --- |
            | small | 100 | 1.00 s, 100/s, 50 MiB, ratio 0.25 | 4.00 s, 25/s, 50 MiB |
            | large | 200 | 2.00 s, 100/s, 50 MiB, ratio 0.13 | 16.00 s, 13/s, 50 MiB |
            | Growth |  | n^1.00 (n log n: n^1.20) | n^2.00 (n log n: n^1.20) |
            """);
  }

  @Test
  void ofTwoRunsTheQuickerTimeAndTheLargerPeakCount() {
    Timed best = timed(2).better(new Timed(1, OptionalDouble.of(70)));
    assertThat(best).isEqualTo(new Timed(1, OptionalDouble.of(70)));
    assertThat(new Timed(3, OptionalDouble.empty()).better(timed(4))).isEqualTo(timed(3));
  }

  private static Timed timed(double seconds) {
    return new Timed(seconds, OptionalDouble.of(50));
  }
}
