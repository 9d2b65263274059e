package org.coatrun.routing.siting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CoverSearchTest {

  private static final double LIMIT = 60;

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void costEqualsThatOfLookingAtEverything(int mostMachines) {
    int withGaps = 0;
    for (long number = 0; number < 30; number++) {
      CoverProblem problem = random(number, 4, 2, 6, 3);
      double sure = new AllCovers(problem, mostMachines).objective();
      CoverResult result = CoverSearch.solve(problem, mostMachines, 10_000);
      Cover cover = result.cover().orElseThrow();
      String which = "problem " + number;
      assertThat(result.optimal()).as(which).isTrue();
      assertThat(cover.cost() + cover.uncovered() * problem.uncovered())
          .as(which)
          .isCloseTo(sure, within(1e-6 * sure));
      assertThat(result.bound()).isCloseTo(cover.cost(), within(1e-6 * Math.max(1, sure)));
      assertThat(countedAgain(problem, cover)).isCloseTo(cover.cost(), within(1e-6 * sure));
      withGaps += cover.uncovered() > 0 ? 1 : 0;
    }
    assertThat(withGaps).isBetween(1, 29);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void theBoundNeverPassesTheCostWhereNodesRunOut(long number) {
    CoverProblem problem = random(number, 24, 8, 60, 12);
    CoverResult cut = CoverSearch.solve(problem, 2, 2);
    CoverResult full = CoverSearch.solve(problem, 2, 20_000);
    double cost = full.cover().orElseThrow().cost();
    assertThat(full.optimal()).isTrue();
    assertThat(cut.cover().orElseThrow().cost()).isGreaterThanOrEqualTo(cost - 1e-6);
    if (cut.cover().orElseThrow().uncovered() == full.cover().orElseThrow().uncovered()) {
      assertThat(cut.bound()).isLessThanOrEqualTo(cost + 1e-6);
    }
  }

  @Test
  void theSameProblemGivesTheSameCover() {
    CoverResult a = CoverSearch.solve(random(9, 16, 5, 40, 10), 2, 5000);
    CoverResult b = CoverSearch.solve(random(9, 16, 5, 40, 10), 2, 5000);
    assertThat(a.cover().orElseThrow().options()).isEqualTo(b.cover().orElseThrow().options());
    assertThat(a.nodes()).isEqualTo(b.nodes());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void spotsComparedAreThoseThatLookingAtEverythingFindsBest(int mostMachines) {
    for (long number = 0; number < 30; number++) {
      CoverProblem problem = random(number, 4, 3, 6, 3);
      String which = "problem " + number;
      double[] sure = new double[3];
      for (int m = 0; m < sure.length; m++) {
        sure[m] = AllCovers.from(m, problem).objective();
      }
      CoverResult plan = CoverSearch.solve(problem, mostMachines, 10_000);
      List<SpotRanking.Alone> best = SpotRanking.best(problem, 2, plan, 10_000);
      double[] inOrder = Arrays.stream(sure).sorted().toArray();
      for (int k = 0; k < best.size(); k++) {
        double found = best.get(k).objective(problem.uncovered());
        assertThat(found).as(which).isCloseTo(inOrder[k], within(1e-6 * inOrder[k]));
        assertThat(sure[best.get(k).spot()]).isCloseTo(found, within(1e-6 * found));
      }
      assertThat(best).as(which).hasSize((int) Math.min(2, reaching(problem)));
    }
  }

  /** Also where its first rough cover leaves out what a better one reaches. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void noSpotIsLeftOutThatIsAmongTheBest(long number) {
    CoverProblem problem = random(number, 24, 8, 30, 8);
    CoverResult plan = CoverSearch.solve(problem, 1, 10_000);
    List<SpotRanking.Alone> few = SpotRanking.best(problem, 3, plan, 10_000);
    List<SpotRanking.Alone> all = SpotRanking.best(problem, 8, plan, 10_000);
    assertThat(all).hasSize((int) reaching(problem));
    for (int k = 0; k < few.size(); k++) {
      double sure = all.get(k).objective(problem.uncovered());
      assertThat(few.get(k).objective(problem.uncovered())).isCloseTo(sure, within(1e-6 * sure));
    }
  }

  private static long reaching(CoverProblem problem) {
    return problem.options().stream().map(CoverOption::machine).distinct().count();
  }

  @Test
  void withoutAMachineThereIsNoCover() {
    var problem = new CoverProblem(new double[0], List.of(), List.of(), LIMIT);
    assertThat(CoverSearch.solve(problem, 1, 10).cover()).isEmpty();
  }

  @Test
  void tooManySetsOfSpotsAreRefused() {
    assertThatThrownBy(() -> SpotSets.upTo(3, 200)).isInstanceOf(IllegalArgumentException.class);
    assertThat(SpotSets.upTo(2, 4)).hasSize(4 + 6);
  }

  /** The cost of a cover from its choices alone. */
  private static double countedAgain(CoverProblem problem, Cover cover) {
    double sum = cover.machines().stream().mapToDouble(m -> problem.machineCost()[m]).sum();
    sum += cover.options().stream().mapToDouble(j -> problem.options().get(j).fixed()).sum();
    for (int f = 0; f < problem.floors().size(); f++) {
      Cover.FloorChoice choice = cover.floors().get(f);
      var outlets = new TreeSet<Integer>();
      double floor = 0;
      for (int c = 0; c < choice.option().length; c++) {
        if (choice.option()[c] >= 0) {
          CoverOption option = problem.options().get(choice.option()[c]);
          floor += problem.cost(option, f, choice.outlet()[c], c);
          if (outlets.add(1000 * choice.option()[c] + choice.outlet()[c])) {
            floor += option.outletCost()[f][choice.outlet()[c]];
          }
        }
      }
      for (int j : cover.options()) {
        int of = j;
        List<Integer> own =
            outlets.stream().filter(k -> k / 1000 == of).map(k -> k % 1000).toList();
        floor += problem.options().get(j).trunk().get(f).cost(own);
      }
      sum += problem.floors().get(f).times() * floor;
    }
    return sum;
  }

  /** Machines, risers, outlets and cells at random places of a square; options by both. */
  private static CoverProblem random(
      long number, int options, int machines, int cells, int outlets) {
    var random = new Random(number);
    var floors = new ArrayList<CoverFloor>();
    for (int f = 0; f < 2; f++) {
      double[] weight = random.doubles(cells, 0.2, 3).toArray();
      double[][] hose = new double[outlets][cells];
      double[][] at = points(random, outlets);
      double[][] to = points(random, cells);
      for (int o = 0; o < outlets; o++) {
        for (int c = 0; c < cells; c++) {
          hose[o][c] = Math.hypot(at[o][0] - to[c][0], at[o][1] - to[c][1]);
        }
      }
      floors.add(new CoverFloor(1 + random.nextInt(5), weight, hose));
    }
    var list = new ArrayList<CoverOption>();
    for (int j = 0; j < options; j++) {
      double flexible = random.nextInt(3) == 0 ? 3 : 45 * random.nextDouble();
      double[] before = {
        flexible, random.nextInt(4) == 0 ? Double.POSITIVE_INFINITY : flexible + 5
      };
      double[][] cost = new double[2][];
      for (int f = 0; f < 2; f++) {
        cost[f] = random.doubles(outlets, 5, 120).toArray();
        for (int o = 0; o < outlets; o++) {
          cost[f][o] = random.nextInt(4) == 0 ? Double.POSITIVE_INFINITY : cost[f][o];
        }
      }
      List<Trunk> trunks = List.of(trunk(random, outlets), trunk(random, outlets));
      list.add(
          new CoverOption(
              random.nextInt(machines), 30 + 400 * random.nextDouble(), before, cost, trunks));
    }
    return new CoverProblem(random.doubles(machines, 100, 500).toArray(), list, floors, LIMIT);
  }

  /** Some stretches, one after the other or side by side, and outlets at the end of some. */
  private static Trunk trunk(Random random, int outlets) {
    int[] before = new int[random.nextInt(outlets + 2)];
    for (int n = 0; n < before.length; n++) {
      before[n] = random.nextInt(n + 1) - 1;
    }
    int[] last = random.ints(outlets, -1, before.length).toArray();
    return new Trunk(before, random.doubles(before.length, 5, 90).toArray(), last);
  }

  private static double[][] points(Random random, int n) {
    double[][] points = new double[n][];
    for (int i = 0; i < n; i++) {
      points[i] = new double[] {60 * random.nextDouble(), 60 * random.nextDouble()};
    }
    return points;
  }
}
