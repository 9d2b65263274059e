package org.coatrun.routing.siting;

/** How many parts a search may look at: it counts parts and not time, so that it ends alike. */
final class Budget {

  private final int most;
  private int spent;

  Budget(int most) {
    this.most = most;
  }

  /** Counts so many more parts. */
  void spend(int parts) {
    spent += parts;
  }

  boolean isSpent() {
    return spent >= most;
  }

  int spent() {
    return spent;
  }
}
