package org.coatrun.routing.network;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import org.coatrun.shared.shape.Vec2;

/**
 * The best pipe runs over a floor from one point to every node of its pipe network: least length
 * plus a penalty for each bend, so that a run with fewer bends wins over one as long.
 *
 * <p>From its start the pipe goes straight to one of the nearest nodes it sees.
 */
public final class PipeRuns {

  private static final int STUBS = 4;

  /** Turns flatter than this, in radians, need no bend. */
  private static final double STRAIGHT = Math.toRadians(5);

  private final PipeNetwork network;
  private final Vec2 start;
  private final double bend;
  private final List<State> states = new ArrayList<>();
  private final int[] best;

  /** A way to a node by its last piece. */
  private record State(int node, int before, Vec2 heading, double cost, double length) {}

  /**
   * @param start a free point of the floor
   * @param bend what one bend weighs, in metres of pipe
   */
  public PipeRuns(PipeNetwork network, FloorNetwork floor, Vec2 start, double bend) {
    this.network = network;
    this.start = start;
    this.bend = bend;
    best = new int[network.nodes().size()];
    Arrays.fill(best, -1);
    search(stubs(floor));
  }

  /** The length of pipe to the node at {@code p} in metres, or empty where none leads there. */
  public OptionalDouble lengthTo(Vec2 p) {
    int state = state(p);
    return state < 0 ? OptionalDouble.empty() : OptionalDouble.of(states.get(state).length);
  }

  /** The run to the node at {@code p}: its start, its bends and its end. */
  public Optional<HosePath> runTo(Vec2 p) {
    int state = state(p);
    if (state < 0) {
      return Optional.empty();
    }
    var back = new ArrayList<Vec2>();
    for (int s = state; s >= 0; s = states.get(s).before) {
      back.add(network.nodes().get(states.get(s).node));
    }
    if (back.get(back.size() - 1).distance(start) > 1e-9 || back.size() == 1) {
      back.add(start);
    }
    Collections.reverse(back);
    return Optional.of(new HosePath(straightened(back)));
  }

  /**
   * The runs to all these places together: runs that come the same way share their stretches up to
   * where they part.
   */
  public PipeTree treeTo(List<Vec2> places) {
    var known = new HashMap<Integer, Integer>();
    var before = new ArrayList<Integer>();
    var length = new ArrayList<Double>();
    int[] last = new int[places.size()];
    for (int i = 0; i < last.length; i++) {
      int state = state(places.get(i));
      last[i] = state < 0 ? -1 : stretch(state, known, before, length);
    }
    var tree =
        new PipeTree(
            before.stream().mapToInt(Integer::intValue).toArray(),
            length.stream().mapToDouble(Double::doubleValue).toArray(),
            last);
    return tree.joined();
  }

  private int stretch(
      int state, Map<Integer, Integer> known, List<Integer> before, List<Double> length) {
    var back = new ArrayDeque<Integer>();
    int at = state;
    while (at >= 0 && !known.containsKey(at)) {
      back.push(at);
      at = states.get(at).before;
    }
    int from = at < 0 ? -1 : known.get(at);
    for (int next : back) {
      State s = states.get(next);
      before.add(from);
      length.add(s.length - (s.before < 0 ? 0 : states.get(s.before).length));
      from = before.size() - 1;
      known.put(next, from);
    }
    return from;
  }

  private int state(Vec2 p) {
    int node = network.at(p);
    return node < 0 ? -1 : best[node];
  }

  private List<Integer> stubs(FloorNetwork floor) {
    List<Vec2> nodes = network.nodes();
    Anchor from = floor.anchor(start);
    var order = new ArrayList<Integer>();
    for (int i = 0; i < nodes.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingDouble(i -> nodes.get(i).distance(start)));
    var seen = new ArrayList<Integer>();
    for (int i = 0; i < order.size() && seen.size() < STUBS; i++) {
      if (floor.seesNearly(from, nodes.get(order.get(i)))) {
        seen.add(order.get(i));
      }
    }
    return seen;
  }

  private void search(List<Integer> stubs) {
    var queue =
        new PriorityQueue<Integer>(
            Comparator.<Integer>comparingDouble(s -> states.get(s).cost)
                .thenComparingInt(Integer::intValue));
    List<Vec2> nodes = network.nodes();
    for (int node : stubs) {
      double length = nodes.get(node).distance(start);
      states.add(new State(node, -1, nodes.get(node).minus(start), length, length));
      queue.add(states.size() - 1);
    }
    var settled = new HashSet<Long>();
    while (!queue.isEmpty()) {
      int at = queue.poll();
      State s = states.get(at);
      if (settled.add(arrival(s))) {
        best[s.node] = best[s.node] < 0 ? at : best[s.node];
        for (int to : network.beside(s.node)) {
          step(at, s, to, queue);
        }
      }
    }
  }

  private void step(int at, State s, int to, PriorityQueue<Integer> queue) {
    Vec2 heading = network.nodes().get(to).minus(network.nodes().get(s.node));
    double length = heading.length();
    double penalty = turn(s.heading, heading) > STRAIGHT ? bend : 0;
    states.add(new State(to, at, heading, s.cost + length + penalty, s.length + length));
    queue.add(states.size() - 1);
  }

  /** A node together with the piece it was reached by. */
  private long arrival(State s) {
    int from = s.before < 0 ? network.nodes().size() : states.get(s.before).node;
    return ((long) s.node << 32) | from;
  }

  private static double turn(Vec2 in, Vec2 out) {
    return in.length() == 0 ? 0 : Math.abs(Math.atan2(in.cross(out), in.dot(out)));
  }

  private static List<Vec2> straightened(List<Vec2> points) {
    var kept = new ArrayList<Vec2>();
    for (int i = 0; i < points.size(); i++) {
      boolean end = i == 0 || i == points.size() - 1;
      if (end
          || turn(points.get(i).minus(points.get(i - 1)), points.get(i + 1).minus(points.get(i)))
              > 1e-6) {
        kept.add(points.get(i));
      }
    }
    return kept;
  }
}
