package org.coatrun.routing.siting;

/** The best cover met so far. */
final class Incumbent {

  private static final double SAME = 1e-9;

  private Evaluator.Valued best;

  Incumbent(Evaluator.Valued first) {
    best = first;
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

  /** A part whose bound is not below this holds nothing better, up to rounding. */
  double cutoff() {
    return best.objective() - noise(best.objective());
  }

  /** Differences below this are rounding. */
  static double noise(double objective) {
    return SAME * Math.max(1, Math.abs(objective));
  }
}
