package org.coatrun.routing.siting;

import java.util.List;

/**
 * One way for material to come up from one machine: a riser, its mode on the ground and its mode of
 * rising.
 *
 * @param machine index of the machine spot
 * @param fixed what it costs once
 * @param before for each floor, flexible hose up to there in metres; infinite where not served
 * @param outletCost for each floor and outlet, what setting it up costs on one such floor, without
 *     pipe; infinite where it cannot be had; rows may be shared and may be empty where not served
 * @param trunk for each floor, the pipe to the outlets; may be shared, and be of no outlets where
 *     not served
 */
public record CoverOption(
    int machine, double fixed, double[] before, double[][] outletCost, List<Trunk> trunk) {
  public CoverOption {
    trunk = List.copyOf(trunk);
  }

  boolean serves(int floor) {
    return Double.isFinite(before[floor]);
  }
}
