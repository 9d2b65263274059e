package org.coatrun.routing.siting;

/**
 * What all searches of one problem share; nothing of it changes.
 *
 * @param outlets by option and floor, the outlets that can be had
 * @param penalty what a cell left uncovered counts for
 */
record SearchBasis(
    CoverProblem problem,
    Coverage coverage,
    SpotOptions options,
    Bounder bounder,
    int[][][] outlets,
    double penalty) {

  static SearchBasis of(CoverProblem problem) {
    var coverage = new Coverage(problem);
    var bounder = new Bounder(problem, coverage);
    return new SearchBasis(
        problem,
        coverage,
        new SpotOptions(problem, coverage),
        bounder,
        bounder.allOutlets(),
        problem.uncovered());
  }
}
