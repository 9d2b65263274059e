package org.coatrun.routing.network;

import java.util.Arrays;
import java.util.List;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;
import org.jgrapht.Graph;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;

/**
 * The reduced visibility graph of a free area: corners around which a taut hose can bend, joined
 * where a straight line touches both and enters no solid. Shortest ways in it are exact.
 *
 * <p>Building takes time in the order of the pairs of corners times the edges beside their line. An
 * instance serves one thread.
 */
public final class FloorNetwork {

  private static final double HAIR = 1e-3;

  private final Corners corners;
  private final Sight sight;
  private final int[] reflex;
  private final Graph<Integer, DefaultWeightedEdge> graph;

  /** Builds the network of a free area whose regions do not touch each other. */
  public FloorNetwork(List<Region> free) {
    corners = new Corners(free);
    sight = new Sight(corners);
    int[] found = new int[corners.size()];
    int n = 0;
    for (int i = 0; i < corners.size(); i++) {
      if (corners.reflex(i)) {
        found[n++] = i;
      }
    }
    reflex = Arrays.copyOf(found, n);
    graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    join();
  }

  /** How many corners a hose can bend around. */
  public int cornerCount() {
    return reflex.length;
  }

  /** How many straight pieces join them. */
  public int edgeCount() {
    return graph.edgeSet().size();
  }

  /** All shortest ways from one free point; the point is taken to the nearest 0.1 mm. */
  public HoseDistances from(Vec2 source) {
    return new HoseDistances(this, anchor(source));
  }

  /** Ties a free point into the network, so that ways to it from many sources cost little. */
  Anchor anchor(Vec2 p) {
    long px = Corners.grain(p.x());
    long py = Corners.grain(p.y());
    int[] seen = new int[reflex.length];
    int n = 0;
    for (int c : reflex) {
      if (corners.tangent(px, py, c) && sight.clear(px, py, corners.x[c], corners.y[c])) {
        seen[n++] = c;
      }
    }
    return new Anchor(px, py, Arrays.copyOf(seen, n));
  }

  boolean sees(Anchor a, Anchor b) {
    return sight.clear(a.x(), a.y(), b.x(), b.y());
  }

  /**
   * Whether a sees p, where p may lie a hair outside the free area: the last millimetre before p is
   * not looked at.
   */
  boolean seesNearly(Anchor a, Vec2 p) {
    Vec2 way = p.minus(a.point());
    double length = way.length();
    Vec2 before = length <= HAIR ? a.point() : p.minus(way.times(HAIR / length));
    return sight.clear(a.x(), a.y(), Corners.grain(before.x()), Corners.grain(before.y()));
  }

  double distance(Anchor a, int corner) {
    return Math.hypot(a.x() - corners.x[corner], a.y() - corners.y[corner]) / Corners.SCALE;
  }

  Vec2 corner(int i) {
    return corners.point(i);
  }

  /** One more than the highest corner number. */
  int size() {
    return corners.size();
  }

  int[] reflex() {
    return reflex;
  }

  Graph<Integer, DefaultWeightedEdge> graph() {
    return graph;
  }

  private void join() {
    for (int c : reflex) {
      graph.addVertex(c);
    }
    for (int i = 0; i < reflex.length; i++) {
      for (int j = i + 1; j < reflex.length; j++) {
        if (bitangent(reflex[i], reflex[j])) {
          DefaultWeightedEdge e = graph.addEdge(reflex[i], reflex[j]);
          graph.setEdgeWeight(e, corners.point(reflex[i]).distance(corners.point(reflex[j])));
        }
      }
    }
  }

  private boolean bitangent(int i, int j) {
    long ix = corners.x[i];
    long iy = corners.y[i];
    long jx = corners.x[j];
    long jy = corners.y[j];
    return corners.tangent(ix, iy, j) && corners.tangent(jx, jy, i) && sight.clear(ix, iy, jx, jy);
  }
}
