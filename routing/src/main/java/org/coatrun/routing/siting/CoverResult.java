package org.coatrun.routing.siting;

import java.util.Optional;

/**
 * The best cover found and what is proven about it.
 *
 * @param cover the best found; empty where there is no machine spot
 * @param bound no cover that leaves as few cells uncovered costs less than this
 * @param nodes how many nodes were looked at
 * @param optimal whether the cover is proven best, up to rounding
 * @param price by floor and cell, at which the first part was bounded; parts like it begin well
 *     with these
 */
public record CoverResult(
    Optional<Cover> cover, double bound, int nodes, boolean optimal, double[][] price) {}
