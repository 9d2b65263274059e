package org.coatrun.routing.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coatrun.shared.shape.Vec2;
import org.jgrapht.Graph;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.interfaces.ShortestPathAlgorithm.SingleSourcePaths;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;

/** The shortest ways over a floor from one point to any other. */
public final class HoseDistances {

  /** No corner has this number. */
  private static final int SOURCE = -1;

  private final FloorNetwork network;
  private final Anchor source;
  private final double[] length;
  private final int[] before;

  HoseDistances(FloorNetwork network, Anchor source) {
    this.network = network;
    this.source = source;
    length = new double[network.size()];
    before = new int[network.size()];
    Arrays.fill(length, Double.POSITIVE_INFINITY);
    search();
  }

  /** The length of the shortest way in metres, or empty where none leads there. */
  public OptionalDouble to(Target target) {
    Anchor end = target.anchor();
    if (network.sees(source, end)) {
      return OptionalDouble.of(source.point().distance(end.point()));
    }
    int corner = lastCorner(end);
    return corner < 0 ? OptionalDouble.empty() : OptionalDouble.of(through(end, corner));
  }

  /** The shortest way itself, or empty where none leads there. */
  public Optional<HosePath> pathTo(Target target) {
    Anchor end = target.anchor();
    if (network.sees(source, end)) {
      return Optional.of(new HosePath(List.of(source.point(), end.point())));
    }
    int corner = lastCorner(end);
    return corner < 0 ? Optional.empty() : Optional.of(path(end, corner));
  }

  private HosePath path(Anchor end, int last) {
    var back = new ArrayList<Vec2>();
    add(back, end.point());
    for (int corner = last; corner != SOURCE; corner = before[corner]) {
      add(back, network.corner(corner));
    }
    add(back, source.point());
    if (back.size() == 1) {
      back.add(source.point());
    }
    Collections.reverse(back);
    return new HosePath(back);
  }

  private static void add(List<Vec2> points, Vec2 p) {
    if (points.isEmpty() || !points.get(points.size() - 1).equals(p)) {
      points.add(p);
    }
  }

  private int lastCorner(Anchor end) {
    int best = SOURCE;
    for (int corner : end.corners()) {
      if (Double.isFinite(length[corner])
          && (best == SOURCE || through(end, corner) < through(end, best))) {
        best = corner;
      }
    }
    return best;
  }

  private double through(Anchor end, int corner) {
    return length[corner] + network.distance(end, corner);
  }

  private void search() {
    Graph<Integer, DefaultWeightedEdge> graph = network.graph();
    graph.addVertex(SOURCE);
    for (int corner : source.corners()) {
      graph.setEdgeWeight(graph.addEdge(SOURCE, corner), network.distance(source, corner));
    }
    SingleSourcePaths<Integer, DefaultWeightedEdge> paths =
        new DijkstraShortestPath<>(graph).getPaths(SOURCE);
    for (int corner : network.reflex()) {
      GraphPath<Integer, DefaultWeightedEdge> path = paths.getPath(corner);
      if (path != null) {
        List<Integer> way = path.getVertexList();
        length[corner] = path.getWeight();
        before[corner] = way.get(way.size() - 2);
      }
    }
    graph.removeVertex(SOURCE);
  }
}
