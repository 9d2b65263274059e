package org.coatrun.routing.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.coatrun.shared.line.Region;
import org.coatrun.shared.shape.Vec2;

/**
 * The straight pieces along which pipe can lie: the edges of the free area (along walls and slab
 * edges) and lines beside each row of columns, both ways.
 */
final class PipeLines {

  /** Columns whose centres differ by less than this across a row stand in one row. */
  private static final double ROW = 0.4;

  /** Pipe does not turn around single columns: rings whose edges are all shorter carry none. */
  private static final double WALL = 1.5;

  private static final double SHORTEST = 0.05;

  private PipeLines() {}

  /** A straight piece of pipe in frame coordinates. */
  record Piece(Vec2 from, Vec2 to) {}

  /**
   * All pieces, in the coordinates of the frame.
   *
   * @param columns outlines of columns
   * @param margin what pipe keeps off a column, in metres
   */
  static List<Piece> of(List<Region> free, List<Region> columns, Frame frame, double margin) {
    var pieces = new ArrayList<Piece>();
    List<List<Vec2>> rings = rings(free, frame);
    rings.stream().map(PipeLines::edges).filter(PipeLines::isWall).forEach(pieces::addAll);
    List<Box> boxes = columns.stream().map(c -> Box.of(c, frame)).toList();
    for (double v : rows(boxes.stream().map(Box::turned).toList(), margin, rings)) {
      cut(rings, v).forEach(p -> add(pieces, p));
    }
    List<List<Vec2>> turned = rings.stream().map(PipeLines::turned).toList();
    for (double u : rows(boxes, margin, turned)) {
      cut(turned, u).forEach(p -> add(pieces, new Piece(turned(p.from), turned(p.to))));
    }
    return pieces;
  }

  private static List<Piece> edges(List<Vec2> ring) {
    var edges = new ArrayList<Piece>();
    for (int i = 0; i < ring.size(); i++) {
      edges.add(new Piece(ring.get(i), ring.get((i + 1) % ring.size())));
    }
    return edges;
  }

  private static boolean isWall(List<Piece> ring) {
    return ring.stream().anyMatch(e -> e.from.distance(e.to) >= WALL);
  }

  private static void add(List<Piece> pieces, Piece p) {
    if (p.from.distance(p.to) > SHORTEST) {
      pieces.add(p);
    }
  }

  /**
   * One line beside each row of at least two columns: the row's columns are centred on about one x;
   * the line keeps off the widest of them. The side with more free length wins.
   */
  private static List<Double> rows(List<Box> boxes, double margin, List<List<Vec2>> rings) {
    List<Box> sorted = boxes.stream().sorted(Comparator.comparingDouble(Box::middle)).toList();
    var lines = new ArrayList<Double>();
    int from = 0;
    for (int i = 1; i <= sorted.size(); i++) {
      if (i == sorted.size() || sorted.get(i).middle() - sorted.get(i - 1).middle() > ROW) {
        if (i - from > 1) {
          lines.add(beside(sorted.subList(from, i), margin, rings));
        }
        from = i;
      }
    }
    return lines;
  }

  private static double beside(List<Box> row, double margin, List<List<Vec2>> rings) {
    double off = margin + 0.01;
    double low = row.stream().mapToDouble(Box::low).min().orElseThrow() - off;
    double high = row.stream().mapToDouble(Box::high).max().orElseThrow() + off;
    return length(cut(rings, high)) >= length(cut(rings, low)) ? high : low;
  }

  private static double length(List<Piece> pieces) {
    return pieces.stream().mapToDouble(p -> p.from.distance(p.to)).sum();
  }

  /** The pieces of the line y = v inside the rings. */
  private static List<Piece> cut(List<List<Vec2>> rings, double v) {
    var xs = new ArrayList<Double>();
    for (List<Vec2> ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        Vec2 a = ring.get(i);
        Vec2 b = ring.get((i + 1) % ring.size());
        if (a.y() > v != b.y() > v) {
          xs.add(a.x() + (v - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
        }
      }
    }
    xs.sort(Comparator.naturalOrder());
    var pieces = new ArrayList<Piece>();
    for (int i = 1; i < xs.size(); i += 2) {
      pieces.add(new Piece(new Vec2(xs.get(i - 1), v), new Vec2(xs.get(i), v)));
    }
    return pieces;
  }

  private static List<List<Vec2>> rings(List<Region> free, Frame frame) {
    var rings = new ArrayList<List<Vec2>>();
    for (Region r : free) {
      rings.add(r.outline().stream().map(frame::toLocal).toList());
      r.holes().forEach(h -> rings.add(h.stream().map(frame::toLocal).toList()));
    }
    return rings;
  }

  private static List<Vec2> turned(List<Vec2> ring) {
    return ring.stream().map(PipeLines::turned).toList();
  }

  private static Vec2 turned(Vec2 p) {
    return new Vec2(p.y(), p.x());
  }

  /** A column across a row: from low to high, its centre in the middle. */
  private record Box(double low, double high, double otherLow, double otherHigh) {
    static Box of(Region column, Frame frame) {
      List<Vec2> ring = column.outline().stream().map(frame::toLocal).toList();
      return new Box(
          ring.stream().mapToDouble(Vec2::x).min().orElseThrow(),
          ring.stream().mapToDouble(Vec2::x).max().orElseThrow(),
          ring.stream().mapToDouble(Vec2::y).min().orElseThrow(),
          ring.stream().mapToDouble(Vec2::y).max().orElseThrow());
    }

    double middle() {
      return (low + high) / 2;
    }

    Box turned() {
      return new Box(otherLow, otherHigh, low, high);
    }
  }
}
