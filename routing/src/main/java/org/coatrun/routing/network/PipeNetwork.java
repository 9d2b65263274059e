package org.coatrun.routing.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;

/**
 * Where pipe can lie on a floor, as nodes and straight pieces between them: along walls and slab
 * edges and beside the rows of columns. Nodes are where pieces meet and, along long pieces, every
 * outlet spacing.
 */
public final class PipeNetwork {

  /** Nodes nearer than this are one, in metres. */
  private static final double SAME = 1e-3;

  private final List<Vec2> nodes = new ArrayList<>();
  private final List<List<Integer>> beside = new ArrayList<>();
  private final Map<Place, Integer> known = new HashMap<>();
  private final Frame frame;

  /**
   * @param free the free area
   * @param columns outlines of the columns
   * @param margin what pipe keeps off columns, in metres
   * @param spacing greatest distance of nodes along a piece, in metres
   */
  public PipeNetwork(List<Region> free, List<Region> columns, double margin, double spacing) {
    frame = Frame.of(free);
    List<PipeLines.Piece> pieces = PipeLines.of(free, columns, frame, margin);
    for (PipeLines.Piece piece : pieces) {
      chain(piece, cuts(piece, pieces, spacing));
    }
  }

  /** The places of the nodes. */
  public List<Vec2> nodes() {
    return List.copyOf(nodes);
  }

  /** The nodes joined to node i by a straight piece. */
  List<Integer> beside(int i) {
    return beside.get(i);
  }

  /** Nodes at least {@code apart} metres from each other, so that every node is near one. */
  public List<Vec2> outlets(double apart) {
    var order = new ArrayList<>(nodes);
    order.sort(Comparator.comparingDouble(Vec2::y).thenComparingDouble(Vec2::x));
    var kept = new ArrayList<Vec2>();
    for (Vec2 p : order) {
      if (kept.stream().allMatch(q -> q.distance(p) >= apart)) {
        kept.add(p);
      }
    }
    return kept;
  }

  /** The node at {@code p}, or −1. */
  int at(Vec2 p) {
    return known.getOrDefault(key(frame.toLocal(p)), -1);
  }

  private static SortedSet<Double> cuts(
      PipeLines.Piece piece, List<PipeLines.Piece> others, double spacing) {
    var cuts = new TreeSet<>(List.of(0.0, 1.0));
    for (PipeLines.Piece o : others) {
      double t = crossing(piece, o);
      if (t > 0 && t < 1) {
        cuts.add(t);
      }
    }
    double length = piece.from().distance(piece.to());
    double before = 0;
    for (double t : List.copyOf(cuts)) {
      int n = (int) Math.ceil((t - before) * length / spacing - 1e-9);
      for (int i = 1; i < n; i++) {
        cuts.add(before + (t - before) * i / n);
      }
      before = t;
    }
    return cuts;
  }

  /** Where piece p is met by o, as a part of p's length, or NaN. */
  private static double crossing(PipeLines.Piece p, PipeLines.Piece o) {
    Vec2 d = p.to().minus(p.from());
    Vec2 e = o.to().minus(o.from());
    double cross = d.cross(e);
    if (Math.abs(cross) < 1e-9 * d.length() * e.length()) {
      return Double.NaN;
    }
    Vec2 gap = o.from().minus(p.from());
    double t = gap.cross(e) / cross;
    double s = gap.cross(d) / cross;
    double slip = SAME / e.length();
    return s >= -slip && s <= 1 + slip ? t : Double.NaN;
  }

  private void chain(PipeLines.Piece piece, SortedSet<Double> cuts) {
    int before = -1;
    for (double t : cuts) {
      int at = node(piece.from().plus(piece.to().minus(piece.from()).times(t)));
      if (before >= 0 && before != at && !beside.get(before).contains(at)) {
        beside.get(before).add(at);
        beside.get(at).add(before);
      }
      before = at;
    }
  }

  private int node(Vec2 local) {
    return known.computeIfAbsent(
        key(local),
        k -> {
          nodes.add(frame.toFloor(local));
          beside.add(new ArrayList<>());
          return nodes.size() - 1;
        });
  }

  private static Place key(Vec2 local) {
    return new Place(Math.round(local.x() / SAME), Math.round(local.y() / SAME));
  }

  /** A place on a millimetre lattice. */
  private record Place(long u, long v) {}
}
