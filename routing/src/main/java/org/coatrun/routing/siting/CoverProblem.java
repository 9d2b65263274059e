package org.coatrun.routing.siting;

import java.util.List;

/**
 * Cover every cell of every floor from outlets of opened options of opened machines, at least cost.
 *
 * @param machineCost what each machine spot costs
 * @param limit most flexible hose from machine to cell, in metres
 */
public record CoverProblem(
    double[] machineCost, List<CoverOption> options, List<CoverFloor> floors, double limit) {

  /** Sums of lengths carry noise; a hose longer than the limit by less than this is allowed. */
  static final double NOISE = 1e-6;

  public CoverProblem {
    options = List.copyOf(options);
    floors = List.copyOf(floors);
  }

  /** What spraying a cell through an option and an outlet costs the material, or infinity. */
  double cost(CoverOption option, int floor, int outlet, int cell) {
    CoverFloor f = floors.get(floor);
    double flexible = option.before()[floor] + f.hose()[outlet][cell];
    return flexible <= limit + NOISE ? f.weight()[cell] * flexible : Double.POSITIVE_INFINITY;
  }

  /** Whether the option can cover the cell through some outlet. */
  boolean covers(CoverOption option, int floor, int cell) {
    if (!option.serves(floor)) {
      return false;
    }
    double[] costs = option.outletCost()[floor];
    for (int o = 0; o < costs.length; o++) {
      if (Double.isFinite(costs[o]) && Double.isFinite(cost(option, floor, o, cell))) {
        return true;
      }
    }
    return false;
  }

  /** What leaving a cell uncovered costs: more than opening whatever covers it. */
  double uncovered() {
    double most = 1;
    for (double c : machineCost) {
      most = Math.max(most, c);
    }
    double option = 0;
    double outlet = 0;
    double pipe = 0;
    for (CoverOption o : options) {
      option = Math.max(option, o.fixed());
      for (Trunk trunk : o.trunk()) {
        pipe = Math.max(pipe, trunk.dearest());
      }
      for (double[] row : o.outletCost()) {
        for (double c : row) {
          outlet = Double.isFinite(c) ? Math.max(outlet, c) : outlet;
        }
      }
    }
    double weight = 0;
    for (CoverFloor f : floors) {
      for (double w : f.weight()) {
        weight = Math.max(weight, w);
      }
    }
    return 2 * (most + option + outlet + pipe + weight * limit);
  }
}
