package org.coatrun.routing.siting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * A part of the search: some machine spots, some of their options open, some closed.
 *
 * @param spots the machine spots, all of them paid for
 * @param free options not yet decided, ascending
 * @param open options decided open
 * @param outlets by option and floor, the outlets not ruled out yet
 * @param bound no cover in this part counts for less
 * @param price prices at which the bound was found
 * @param fresh whether only another part's prices were tried so far
 * @param order when it was made; parts of one bound are looked at in this order
 */
record Node(
    List<Integer> spots,
    List<Integer> free,
    BitSet open,
    int[][][] outlets,
    double bound,
    double[][] price,
    boolean fresh,
    long order)
    implements Comparable<Node> {

  /** The options that the part may use: those free and those open. */
  List<Integer> undropped() {
    var all = new ArrayList<>(free);
    open.stream().forEach(all::add);
    return all;
  }

  @Override
  public int compareTo(Node o) {
    return bound != o.bound ? Double.compare(bound, o.bound) : Long.compare(order, o.order);
  }
}
