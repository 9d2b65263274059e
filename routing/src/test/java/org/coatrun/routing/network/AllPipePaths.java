package org.coatrun.routing.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;

/**
 * The best pipe by trying every way through a small pipe network, no node twice; ways that already
 * weigh more than the best known are given up.
 */
public final class AllPipePaths {

  private static final int STUBS = 4;

  private final PipeNetwork network;
  private final double bend;
  private final int target;
  private final Set<Integer> used = new HashSet<>();
  private double cost = Double.POSITIVE_INFINITY;
  private double length = Double.POSITIVE_INFINITY;
  private int paths;

  private AllPipePaths(PipeNetwork network, Vec2 target, double bend) {
    this.network = network;
    this.target = network.at(target);
    this.bend = bend;
  }

  /**
   * The best way found.
   *
   * @param cost length and bends weighed
   * @param paths how many ways reached the target
   */
  public record Best(double cost, double length, int paths) {}

  /** The best pipe from a free point to a node; infinite where none leads there. */
  public static Best best(
      PipeNetwork network, List<Region> free, Vec2 start, Vec2 target, double bend) {
    var all = new AllPipePaths(network, target, bend);
    for (int stub : stubs(network, free, start)) {
      Vec2 at = network.nodes().get(stub);
      all.go(stub, at.minus(start), at.distance(start), at.distance(start));
    }
    return new Best(all.cost, all.length, all.paths);
  }

  /** The shortest hose between two points, by looking at all corners; infinite without a way. */
  public static double hose(List<Region> free, Vec2 from, Vec2 to) {
    return new BruteForce(free).distance(from, to);
  }

  /** The four nearest nodes to which nothing stands in the way. */
  private static List<Integer> stubs(PipeNetwork network, List<Region> free, Vec2 start) {
    var order = new ArrayList<Integer>();
    for (int i = 0; i < network.nodes().size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingDouble(i -> network.nodes().get(i).distance(start)));
    var slow = new BruteForce(free);
    return order.stream()
        .filter(
            i -> {
              Vec2 node = network.nodes().get(i);
              Vec2 way = node.minus(start);
              Vec2 before = start.plus(way.times(Math.max(0, 1 - 1e-3 / way.length())));
              return slow.distance(start, before) <= start.distance(before) + 1e-3;
            })
        .limit(STUBS)
        .toList();
  }

  private void go(int node, Vec2 heading, double costSoFar, double lengthSoFar) {
    if (costSoFar > cost + 1e-12) {
      return;
    }
    if (node == target) {
      paths++;
      cost = costSoFar;
      length = lengthSoFar;
      return;
    }
    used.add(node);
    for (int next : network.beside(node)) {
      if (!used.contains(next)) {
        Vec2 way = network.nodes().get(next).minus(network.nodes().get(node));
        double turned = turns(heading, way) ? bend : 0;
        go(next, way, costSoFar + way.length() + turned, lengthSoFar + way.length());
      }
    }
    used.remove(node);
  }

  private static boolean turns(Vec2 in, Vec2 out) {
    boolean none = in.length() == 0;
    return !none && Math.abs(Math.atan2(in.cross(out), in.dot(out))) > Math.toRadians(5);
  }
}
