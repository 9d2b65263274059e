package org.coatrun.routing.siting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The best machine spots, each taken alone. */
public final class SpotRanking {

  private SpotRanking() {}

  /**
   * One spot taken alone.
   *
   * @param spot its index
   * @param options indices of its options in the problem; the result's options count among these
   */
  public record Alone(int spot, List<Integer> options, CoverResult result) {

    double objective(double penalty) {
      return result
          .cover()
          .map(c -> c.cost() + c.uncovered() * penalty)
          .orElse(Double.POSITIVE_INFINITY);
    }
  }

  /**
   * The {@code count} best spots, the best first. Spots are solved in the order of their bounds,
   * until no other can be better than those kept, or three times as many were solved.
   *
   * @param used spots that are among the solved whatever their bounds: those of the plan
   * @param mostNodes parts of each search that are looked at
   */
  public static List<Alone> best(
      CoverProblem problem, int count, List<Integer> used, int mostNodes) {
    double[] bound = CoverSearch.spotBounds(problem);
    List<Integer> order =
        IntStream.range(0, bound.length)
            .boxed()
            .sorted(Comparator.comparingDouble(m -> bound[m]))
            .toList();
    double penalty = problem.uncovered();
    var solved = new ArrayList<Alone>();
    used.forEach(m -> solved.add(alone(problem, m, mostNodes)));
    for (int m : order) {
      if (used.contains(m)) {
        continue;
      }
      boolean enough = solved.size() >= 3 * count;
      if (enough || (solved.size() >= count && worstKept(solved, count, penalty) <= bound[m])) {
        break;
      }
      solved.add(alone(problem, m, mostNodes));
    }
    solved.sort(
        Comparator.comparingDouble((Alone a) -> a.objective(penalty))
            .thenComparingInt(Alone::spot));
    return List.copyOf(solved.subList(0, Math.min(count, solved.size())));
  }

  private static double worstKept(List<Alone> solved, int count, double penalty) {
    double[] all = solved.stream().mapToDouble(a -> a.objective(penalty)).sorted().toArray();
    return all[count - 1];
  }

  private static Alone alone(CoverProblem problem, int m, int mostNodes) {
    int[] options =
        IntStream.range(0, problem.options().size())
            .filter(j -> problem.options().get(j).machine() == m)
            .toArray();
    List<CoverOption> own =
        Arrays.stream(options)
            .mapToObj(j -> problem.options().get(j))
            .map(o -> new CoverOption(0, o.fixed(), o.before(), o.outletCost()))
            .toList();
    var single =
        new CoverProblem(
            new double[] {problem.machineCost()[m]}, own, problem.floors(), problem.limit());
    return new Alone(
        m, Arrays.stream(options).boxed().toList(), CoverSearch.solve(single, 1, mostNodes));
  }
}
