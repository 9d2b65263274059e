package org.coatrun.shared.line;

/**
 * What is proven about the choice of machines, risers and outlets.
 *
 * <p>Pipe over a floor is priced for each of its outlets as if laid from the riser anew. Outlets
 * whose pipe shares a trunk cost less than that, so that a plan with more of them may be cheaper on
 * site than it counts for here.
 *
 * @param cost of the plan
 * @param bound no plan that leaves as few places out costs less, among the risers, spots and
 *     outlets looked at
 * @param nodes how many parts of the search were looked at
 * @param optimal whether the plan is proven best
 */
public record Proof(double cost, double bound, int nodes, boolean optimal) {

  /** How far the plan may be from the best, as a part of its cost. */
  public double gap() {
    return optimal || cost <= 0 ? 0 : Math.max(0, (cost - bound) / cost);
  }
}
