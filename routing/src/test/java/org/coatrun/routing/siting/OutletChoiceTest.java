package org.coatrun.routing.siting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OutletChoiceTest {

  private static final int OUTLETS = 12;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void theChoiceIsTheBestOfAllSets(long number) {
    var random = new Random(number);
    for (int n = 0; n < 25; n++) {
      OutletCosts costs = random(random);
      double sure = best(costs);
      var choice = new OutletChoice(costs);
      assertThat(choice.cost()).isGreaterThanOrEqualTo(sure - 1e-9);
      choice.bounded(Double.POSITIVE_INFINITY, new Budget(10_000));
      assertThat(choice.bound()).isLessThanOrEqualTo(sure + 1e-6);
      choice.settle(Double.POSITIVE_INFINITY, new Budget(10_000));
      assertThat(choice.cost()).as("%d, %d", number, n).isCloseTo(sure, within(1e-6 * sure));
      assertThat(choice.bound()).isCloseTo(sure, within(1e-6 * sure));
    }
  }

  /** Nothing is claimed beyond what was asked for, nor beyond what the budget proved. */
  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23, 24, 25, 26})
  void theBoundHoldsWhereTheSearchEndsEarly(long number) {
    OutletCosts costs = random(new Random(number));
    double sure = best(costs);
    for (double enough : new double[] {0.8 * sure, 0.99 * sure, 1.5 * sure}) {
      for (int most : new int[] {1, 2, 5}) {
        var choice = new OutletChoice(costs);
        choice.bounded(Double.POSITIVE_INFINITY, new Budget(1000));
        choice.settle(enough, new Budget(most));
        assertThat(choice.bound()).isLessThanOrEqualTo(sure + 1e-6);
        assertThat(choice.cost()).isGreaterThanOrEqualTo(sure - 1e-6);
      }
    }
  }

  /** Twelve outlets behind one long pipe: the bound sees that the pipe is paid for once. */
  @Test
  void aLongPipeToManyOutletsIsSeenByTheFirstBound() {
    int[] before = IntStream.range(-1, 12).map(n -> n < 0 ? -1 : 0).toArray();
    double[] pipe = new double[13];
    Arrays.fill(pipe, 1);
    pipe[0] = 400;
    double[][] cost = new double[12][20];
    for (double[] row : cost) {
      Arrays.fill(row, 5);
    }
    double[] fixed = new double[12];
    Arrays.fill(fixed, 30);
    int[] last = IntStream.rangeClosed(1, 12).toArray();
    var choice = new OutletChoice(new OutletCosts(fixed, new Trunk(before, pipe, last), cost));
    choice.bounded(Double.POSITIVE_INFINITY, new Budget(1000));
    assertThat(choice.cost()).isEqualTo(400 + 1 + 30 + 20 * 5);
    assertThat(choice.bound()).isGreaterThan(0.98 * choice.cost());
  }

  private static double best(OutletCosts costs) {
    double best = Double.POSITIVE_INFINITY;
    for (int set = 1; set < 1 << costs.outlets(); set++) {
      boolean[] open = new boolean[costs.outlets()];
      for (int i = 0; i < open.length; i++) {
        open[i] = (set >> i & 1) == 1;
      }
      best = Math.min(best, costs.sum(open));
    }
    return best;
  }

  /** Outlets along pipe that forks, some out of reach of some cells. */
  private static OutletCosts random(Random random) {
    int[] before = new int[14];
    for (int n = 0; n < before.length; n++) {
      before[n] = random.nextInt(n + 1) - 1;
    }
    int[] last = random.ints(OUTLETS, -1, before.length).toArray();
    var trunk = new Trunk(before, random.doubles(before.length, 5, 90).toArray(), last);
    double[][] cost = new double[OUTLETS][16];
    for (int i = 0; i < OUTLETS; i++) {
      for (int c = 0; c < cost[i].length; c++) {
        boolean reached = i == 0 || random.nextInt(4) > 0;
        cost[i][c] = reached ? 90 * random.nextDouble() : Double.POSITIVE_INFINITY;
      }
    }
    return new OutletCosts(random.doubles(OUTLETS, 10, 90).toArray(), trunk, cost);
  }
}
