package org.coatrun.routing.siting;

/** The best cover met so far. */
final class Incumbent {

  private static final double SAME = 1e-7;

  private final double worth;
  private Evaluator.Valued best;

  /**
   * @param worth covers that count for no less are of no interest
   */
  Incumbent(Evaluator.Valued first, double worth) {
    best = first;
    this.worth = worth;
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
    return Math.min(best.objective() - noise(best.objective()), worth);
  }

  /** Differences below this are rounding. */
  static double noise(double objective) {
    return SAME * Math.max(1, Math.abs(objective));
  }
}
