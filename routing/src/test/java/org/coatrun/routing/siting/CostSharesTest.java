package org.coatrun.routing.siting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CostSharesTest {

  private static final int OUTLETS = 7;
  private static final int STRETCHES = 6;

  /** At every step, whatever is had or done without. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void noSetOfOutletsComesBelowTheBound(long number) {
    OutletCosts costs = random(new Random(number));
    var shares = new CostShares(tree(costs));
    for (int steps = 0; steps < 60; steps += 20) {
      shares.raise(1e6, 20);
      assertThat(shares.bound()).isLessThanOrEqualTo(best(costs, -1, true) + 1e-6);
      for (int n = 0; n < STRETCHES; n++) {
        CostShares with = shares.with(n);
        CostShares without = shares.without(n);
        with.raise(1e6, 20);
        without.raise(1e6, 20);
        assertThat(with.bound()).isLessThanOrEqualTo(best(costs, n, true) + 1e-6);
        assertThat(without.bound()).isLessThanOrEqualTo(best(costs, n, false) + 1e-6);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void whatAPartDoesWithoutIsLeftToTheOthers(long number) {
    PaidTree tree = tree(random(new Random(number)));
    var shares = new CostShares(tree);
    shares.raise(1e6, 20);
    CostShares with = shares.with(0);
    with.raise(1e6, 20);
    with.exclude(0);
    CostShares without = shares.without(0);
    for (int n = 0; n < tree.size(); n++) {
      boolean behind = n == 0;
      for (int k = n; k >= 0; k = tree.part(k).before()) {
        behind |= k == 0;
      }
      assertThat(with.isOut(n)).isTrue();
      assertThat(shares.isOut(n)).isFalse();
      assertThat(without.isOut(n)).isEqualTo(behind);
    }
  }

  /** Once a set costs so much, no part that it has is ruled out by less. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void whatTheBestSetHasIsNotRuledOut(long number) {
    OutletCosts costs = random(new Random(number));
    double best = best(costs, -1, true);
    PaidTree tree = tree(costs);
    var shares = new CostShares(tree);
    shares.raise(1e6, 200);
    shares.exclude(best + 1e-3);
    boolean found = false;
    for (int set = 1; set < 1 << OUTLETS; set++) {
      boolean[] open = open(set);
      boolean left = true;
      for (int i = 0; i < OUTLETS; i++) {
        left &= !open[i] || !shares.isOut(tree.place(i));
      }
      found |= left && costs.sum(open) <= best + 1e-9;
    }
    assertThat(found).isTrue();
  }

  private static PaidTree tree(OutletCosts costs) {
    var tree = new PaidTree();
    int[] all = new int[OUTLETS];
    for (int i = 0; i < OUTLETS; i++) {
      all[i] = i;
    }
    tree.addPipe(-1, costs.trunk(), all, costs.fixed(), costs.cost(), 1, 0);
    return tree;
  }

  /** Of the sets that go behind a stretch, or do not; those that need not go there pay for it. */
  private static double best(OutletCosts costs, int stretch, boolean with) {
    Trunk trunk = costs.trunk();
    double best = Double.POSITIVE_INFINITY;
    for (int set = 1; set < 1 << OUTLETS; set++) {
      boolean[] open = open(set);
      boolean behind = stretch < 0;
      for (int i = 0; i < OUTLETS; i++) {
        for (int n = trunk.last()[i]; open[i] && n >= 0; n = trunk.before()[n]) {
          behind |= n == stretch;
        }
      }
      best = behind == with ? Math.min(best, costs.sum(open)) : best;
    }
    return best;
  }

  private static boolean[] open(int set) {
    boolean[] open = new boolean[OUTLETS];
    for (int i = 0; i < OUTLETS; i++) {
      open[i] = (set >> i & 1) == 1;
    }
    return open;
  }

  /** An outlet at the end of every stretch, and one that needs no pipe and reaches every cell. */
  private static OutletCosts random(Random random) {
    int[] before = new int[STRETCHES];
    int[] last = new int[OUTLETS];
    for (int n = 0; n < STRETCHES; n++) {
      before[n] = n == 0 ? -1 : random.nextInt(n + 1) - 1;
      last[n] = n;
    }
    last[STRETCHES] = -1;
    double[][] cost = new double[OUTLETS][10];
    for (int i = 0; i < OUTLETS; i++) {
      for (int c = 0; c < cost[i].length; c++) {
        boolean reached = i == STRETCHES || random.nextInt(4) > 0;
        cost[i][c] = reached ? 90 * random.nextDouble() : Double.POSITIVE_INFINITY;
      }
    }
    var trunk = new Trunk(before, random.doubles(STRETCHES, 5, 60).toArray(), last);
    return new OutletCosts(random.doubles(OUTLETS, 10, 60).toArray(), trunk, cost);
  }
}
