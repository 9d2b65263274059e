package org.coatrun.routing.siting;

/** The best cover met so far. */
final class Incumbent {

  private static final double SAME = 1e-9;

  private final Interest interest;
  private Evaluator.Valued best;

  Incumbent(Evaluator.Valued first, Interest interest) {
    best = first;
    this.interest = interest;
  }

  /**
   * Which covers are worth looking for.
   *
   * @param below covers that count for no less are of no interest
   * @param saving nor are those that save less than this part of the best one's cost
   */
  record Interest(double below, double saving) {
    static final Interest ALL = new Interest(Double.POSITIVE_INFINITY, 0);
  }

  Evaluator.Valued best() {
    return best;
  }

  /** Keeps the better of both. */
  void offer(Evaluator.Valued found) {
    if (found.objective() < best.objective() - SAME) {
      best = found;
    }
  }

  /** A part whose bound is not below this holds nothing of interest, up to rounding. */
  double cutoff() {
    double saved = Math.max(noise(best.objective()), interest.saving * best.cover().cost());
    return Math.min(best.objective() - saved, interest.below);
  }

  /** Differences below this are rounding. */
  static double noise(double objective) {
    return SAME * Math.max(1, Math.abs(objective));
  }
}
