package org.coatrun.routing.siting;

import org.coatrun.routing.siting.DualAscent.Status;

/**
 * Outlets to open by the prices of a dual ascent: those that cells pay for in full, no more of them
 * than every cell needs to have one.
 */
final class PrimalChoice {

  private final OutletCosts costs;
  private final Status[] status;
  private final DualAscent.Prices prices;
  private final boolean[] open;

  PrimalChoice(OutletCosts costs, Status[] status, DualAscent.Prices prices) {
    this.costs = costs;
    this.status = status;
    this.prices = prices;
    open = new boolean[costs.outlets()];
  }

  boolean[] open() {
    for (int i = 0; i < open.length; i++) {
      open[i] = status[i] == Status.OPEN;
    }
    for (int c = 0; c < costs.cells(); c++) {
      int only = served(c) ? -1 : sole(c);
      if (only >= 0) {
        open[only] = true;
      }
    }
    for (int c = 0; c < costs.cells(); c++) {
      int[] order = costs.order(c);
      for (int k = 0; k < order.length && !served(c); k++) {
        open[order[k]] |= status[order[k]] != Status.CLOSED && prices.paid(order[k]);
      }
    }
    return open;
  }

  private boolean served(int c) {
    for (int i : costs.order(c)) {
      if (open[i] && pays(c, i)) {
        return true;
      }
    }
    return false;
  }

  /** The one outlet in full paid for that the cell pays towards, or −1 where there are several. */
  private int sole(int c) {
    int only = -1;
    for (int i : costs.order(c)) {
      if (status[i] != Status.CLOSED && prices.paid(i) && pays(c, i)) {
        if (only >= 0) {
          return -1;
        }
        only = i;
      }
    }
    return only;
  }

  private boolean pays(int c, int outlet) {
    return costs.cost(outlet, c) <= prices.dual()[c] + DualAscent.EPS;
  }
}
