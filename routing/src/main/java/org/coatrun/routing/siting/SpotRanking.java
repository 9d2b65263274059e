package org.coatrun.routing.siting;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The best machine spots, each taken alone. */
public final class SpotRanking {

  private final SearchBasis basis;
  private final CoverResult plan;
  private final double penalty;

  private SpotRanking(CoverProblem problem, CoverResult plan) {
    this.plan = plan;
    basis = SearchBasis.of(problem);
    penalty = basis.penalty();
  }

  /**
   * One spot taken alone.
   *
   * @param spot its index
   */
  public record Alone(int spot, CoverResult result) {

    double objective(double penalty) {
      Cover cover = result.cover().orElseThrow();
      return cover.cost() + cover.uncovered() * penalty;
    }
  }

  /**
   * The {@code count} best spots, the best first, each with its best cover, or with its bound where
   * the nodes ran out.
   *
   * @param plan the best cover of the problem; where it has one machine, its spot keeps it
   * @param mostNodes parts of each search that are looked at
   */
  public static List<Alone> best(CoverProblem problem, int count, CoverResult plan, int mostNodes) {
    return problem.options().isEmpty()
        ? List.of()
        : new SpotRanking(problem, plan).best(count, mostNodes);
  }

  /** Spots are looked at roughly first, then well where the bound leaves hope: side by side. */
  private List<Alone> best(int count, int mostNodes) {
    int spots = basis.problem().machineCost().length;
    List<Evaluator.Valued> rough =
        IntStream.range(0, spots)
            .parallel()
            .mapToObj(m -> CoverSearch.roughly(m, basis, plan.price()))
            .toList();
    double kept =
        rough.stream().mapToDouble(r -> r.objective()).sorted().limit(count).max().orElse(0);
    double worst = kept + 2 * Incumbent.noise(kept); // as good as the last one is good enough
    return IntStream.range(0, spots)
        .filter(m -> rough.get(m).bound() < worst)
        .parallel()
        .mapToObj(m -> alone(m, worst, mostNodes))
        .sorted(Comparator.comparingDouble(this::objective).thenComparingInt(Alone::spot))
        .limit(count)
        .toList();
  }

  private double objective(Alone alone) {
    return alone.objective(penalty);
  }

  private Alone alone(int spot, double worth, int mostNodes) {
    boolean planned = plan.cover().map(c -> c.machines().equals(List.of(spot))).orElse(false);
    return new Alone(
        spot, planned ? plan : CoverSearch.from(spot, basis, plan.price(), worth, mostNodes));
  }
}
