package org.coatrun.routing.siting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TrunkTest {

  /** Twenty metres of trunk, then five to one outlet and seven to the other. */
  private static final Trunk FORK =
      new Trunk(new int[] {-1, 0, 0}, new double[] {20, 5, 7}, new int[] {1, 2, -1});

  @Test
  void whatOutletsShareIsLaidOnce() {
    assertThat(FORK.cost(List.of(0))).isEqualTo(25);
    assertThat(FORK.cost(List.of(0, 1))).isEqualTo(32);
    assertThat(FORK.cost(List.of(0, 1, 2))).isEqualTo(32);
    assertThat(FORK.dearest()).isEqualTo(27);
  }

  /** Neither outlet pays for the trunk, both together do. */
  @Test
  void outletsTogetherPayForWhatNoneWouldAlone() {
    double[] worth = {-17, -19, 4};
    assertThat(FORK.least(new int[] {0, 1, 2}, worth)).isEqualTo(20 + 5 + 7 - 17 - 19);
    assertThat(worth).containsExactly(-17, -19, 4);
    double[] alone = {-17};
    assertThat(FORK.least(new int[] {0}, alone)).isZero();
    assertThat(alone).containsExactly(20 + 5 - 17);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void theLeastSetAndTheRiseOfEveryOutletAreThoseOfAllSets(long number) {
    var random = new Random(number);
    Trunk trunk = random(random, 7);
    double[] own = random.doubles(7, -60, 40).toArray();
    int[] outlets = IntStream.range(0, 7).toArray();
    double[] worth = own.clone();
    double least = trunk.least(outlets, worth);
    double sure = best(trunk, own, 0);
    assertThat(least).isCloseTo(sure, within(1e-9));
    for (int o = 0; o < 7; o++) {
      double forced = best(trunk, own, 1 << o) - sure;
      assertThat(Math.max(0, worth[o])).isCloseTo(forced, within(1e-9));
    }
  }

  @Test
  void aStretchBeforeItsOwnStartIsRefused() {
    assertThatThrownBy(() -> new Trunk(new int[] {0}, new double[] {1}, new int[] {0}))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static double best(Trunk trunk, double[] own, int with) {
    double best = Double.POSITIVE_INFINITY;
    for (int set = 0; set < 1 << own.length; set++) {
      if ((set & with) == with) {
        var open = new ArrayList<Integer>();
        double sum = 0;
        for (int o = 0; o < own.length; o++) {
          if ((set >> o & 1) == 1) {
            open.add(o);
            sum += own[o];
          }
        }
        best = Math.min(best, sum + trunk.cost(open));
      }
    }
    return best;
  }

  private static Trunk random(Random random, int outlets) {
    int[] before = new int[6];
    for (int n = 0; n < before.length; n++) {
      before[n] = random.nextInt(n + 1) - 1;
    }
    int[] last = random.ints(outlets, -1, before.length).toArray();
    return new Trunk(before, random.doubles(before.length, 0, 50).toArray(), last);
  }
}
