package org.coatrun.routing.siting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The options that sets of machine spots bring with them. */
final class SpotOptions {

  private final CoverProblem problem;
  private final Coverage coverage;
  private final List<List<Integer>> byMachine = new ArrayList<>();

  /** An option that covers nothing has no place in any cover and is left out. */
  SpotOptions(CoverProblem problem, Coverage coverage) {
    this.problem = problem;
    this.coverage = coverage;
    for (int m = 0; m < problem.machineCost().length; m++) {
      byMachine.add(new ArrayList<>());
    }
    for (int j = 0; j < problem.options().size(); j++) {
      if (!coverage.of(j).isEmpty()) {
        byMachine.get(problem.options().get(j).machine()).add(j);
      }
    }
  }

  /** The options of these spots, ascending. */
  List<Integer> of(List<Integer> spots) {
    return spots.stream().flatMap(m -> byMachine.get(m).stream()).sorted().toList();
  }

  /** The set that leaves least uncovered and, of those, looks cheapest by its fixed costs. */
  List<Integer> mostPromising(List<List<Integer>> sets) {
    return sets.stream()
        .min(
            Comparator.<List<Integer>>comparingInt(this::uncovered)
                .thenComparingDouble(this::rough))
        .orElseThrow();
  }

  private int uncovered(List<Integer> spots) {
    return coverage.uncovered(coverage.of(of(spots)));
  }

  private double rough(List<Integer> spots) {
    double machines = spots.stream().mapToDouble(m -> problem.machineCost()[m]).sum();
    double option =
        of(spots).stream().mapToDouble(j -> problem.options().get(j).fixed()).min().orElse(0);
    return machines + option;
  }
}
